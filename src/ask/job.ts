import { isUnit } from '../calc/units.ts';
import { isNestedDeep } from '../rules/json.ts';
import { readTalkBook } from './book/talk-book.ts';
import type { Job, JobFact } from './reply.ts';
import { readJobSurvey } from './survey/job-survey.ts';

/** A job with nothing in it. */
export const emptyJob: Job = { v: 1, turn: 0, facts: [] };

/** Most that a job may hold, in characters of JSON, and in facts. */
const most = 16 * 1024;
const mostFacts = 120;

/** Reads a job that was sent back. Undefined for one that is damaged, foreign, too large, or from a newer version. */
export function readJob(sent: unknown): Job | undefined {
  if (sent === undefined || sent === null) return emptyJob;
  if (typeof sent !== 'object' || Array.isArray(sent)) return undefined;
  const { v, turn, facts, goal, asked, checked, stage, units, book, survey } = sent as Record<string, unknown>;
  if (v !== 1 || !isTurn(turn) || !Array.isArray(facts) || facts.length > mostFacts || !facts.every(isFact))
    return undefined;
  if (![goal, asked, checked, stage].every((id) => id === undefined || isId(id))) return undefined;
  if (units !== undefined && units !== 'us' && units !== 'metric') return undefined;
  if (isNestedDeep(sent) || JSON.stringify(sent).length > most) return undefined;
  const patches = book === undefined ? undefined : readTalkBook(book, isFact, cleaned);
  if (book !== undefined && !patches) return undefined;
  const readings = survey === undefined ? undefined : readJobSurvey(survey);
  if (survey !== undefined && !readings) return undefined;
  return {
    v: 1,
    turn,
    facts: facts.map(cleaned),
    ...(goal === undefined ? {} : { goal: goal as string }),
    ...(asked === undefined ? {} : { asked: asked as string }),
    ...(checked === undefined ? {} : { checked: checked as string }),
    ...(stage === undefined ? {} : { stage: stage as string }),
    ...(units === undefined ? {} : { units }),
    ...(patches ? { book: patches } : {}),
    ...(readings ? { survey: readings } : {}),
  };
}

const isTurn = (x: unknown): x is number => Number.isSafeInteger(x) && (x as number) >= 0;
const isId = (x: unknown): x is string => typeof x === 'string' && /^[a-z0-9/-]{1,80}$/.test(x);
const isNumber = (x: unknown): boolean => typeof x === 'number' && Number.isFinite(x);

function isFact(fact: unknown): fact is JobFact {
  if (typeof fact !== 'object' || fact === null) return false;
  const { quantity, turn, number, unit, choice, low, high } = fact as Record<string, unknown>;
  if (!isId(quantity) || !isTurn(turn)) return false;
  if (choice !== undefined) return isId(choice);
  return (
    isNumber(number) &&
    typeof unit === 'string' &&
    isUnit(unit) &&
    [low, high].every((end) => end === undefined || isNumber(end))
  );
}

/** Only the fields a fact has: nothing else that was sent comes along. */
function cleaned(fact: JobFact): JobFact {
  const { quantity, turn } = fact;
  if ('choice' in fact) return { quantity, turn, choice: fact.choice };
  const { number, unit, low, high } = fact;
  return {
    quantity,
    turn,
    number,
    unit,
    ...(low === undefined ? {} : { low }),
    ...(high === undefined ? {} : { high }),
  };
}
