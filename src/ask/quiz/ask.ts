import {
  besideTopic,
  countWords,
  everythingWords,
  levelWords,
  onWords,
  seatWords,
  topicWords,
} from '../wording/quiz-asks.ts';
import type { QuizRequest } from './request.ts';

/** Questions in a set when nobody says how many. */
export const usualCount = 10;
/** On a tailgate sheet: ten minutes, read aloud. */
export const tailgateCount = 5;

/** What somebody asked for in words. A topic that there is none of stands as it was typed. */
export function readQuizAsk(question: string): QuizRequest {
  const words: readonly string[] = question.toLowerCase().match(/[a-z0-9][a-z0-9'-]{0,40}/g) ?? [];
  const seeded = seedIn(words);
  const rest = words.filter((_, at) => at !== seeded.at && at !== seeded.at + 1);
  const seat = Object.entries(seatWords).find(([, names]) => names.some((name) => hasPhrase(rest, name)));
  // The words of a seat name no topic: a quiz for the roller man is for him, not on rolling alone.
  const free = seat ? without(rest, seat[1]) : rest;
  const topics = namedIn(free, topicWords);
  const levels = namedIn(free, levelWords);
  const strange = topics.length || seat ? undefined : strangeTopic(free);
  return {
    count: countIn(free) ?? (words.includes('tailgate') ? tailgateCount : usualCount),
    ...(topics.length ? { topics } : strange === undefined ? {} : { topics: [strange] }),
    ...(seat ? { seat: seat[0] } : {}),
    ...(levels.length ? { levels } : {}),
    ...(seeded.seed === undefined ? {} : { seed: seeded.seed }),
    ...(hasPhrase(rest, 'set b') || hasPhrase(rest, 'variant b') ? { variant: 'B' } : {}),
  };
}

/** "seed winter-7" names the seed; nothing else does. */
function seedIn(words: readonly string[]): { readonly at: number; readonly seed?: string } {
  const at = words.indexOf('seed');
  const seed = at < 0 ? undefined : words[at + 1];
  return seed === undefined ? { at: Number.NaN } : { at, seed };
}

/** The number that stands nearest before the questions or the quiz; else the first one. */
function countIn(words: readonly string[]): number | undefined {
  const found = words.flatMap((word) => {
    if (/^[0-9]{1,6}$/.test(word)) return [Number(word)];
    const [first = '', unit] = word.split('-');
    const number =
      countWords.get(word) ??
      (unit?.startsWith('question') ? (countWords.get(first) ?? plainNumber(first)) : undefined);
    return number === undefined || Number.isNaN(number) ? [] : [number];
  });
  return found[0];
}

const plainNumber = (text: string): number | undefined => (/^[0-9]{1,6}$/.test(text) ? Number(text) : undefined);

const namedIn = (words: readonly string[], names: Readonly<Record<string, readonly string[]>>): string[] =>
  Object.entries(names).flatMap(([id, list]) => (list.some((name) => words.includes(name)) ? [id] : []));

const hasPhrase = (words: readonly string[], phrase: string): boolean => ` ${words.join(' ')} `.includes(` ${phrase} `);

function without(words: readonly string[], phrases: readonly string[]): string[] {
  const text = phrases.reduce((all, phrase) => all.replace(` ${phrase} `, '  '), ` ${words.join(' ')} `);
  return text.split(' ').filter(Boolean);
}

/** What stands after "on" and is no topic: "a quiz on cooking". */
function strangeTopic(words: readonly string[]): string | undefined {
  const at = words.findIndex((word) => onWords.includes(word));
  if (at < 0 || words.some((word) => everythingWords.includes(word))) return undefined;
  const known = new Set([...besideTopic, ...countWords.keys(), ...Object.values(levelWords).flat()]);
  const left = words.slice(at + 1).filter((word) => !known.has(word) && !/^[0-9]/.test(word));
  return left.length ? left.slice(0, 3).join(' ') : undefined;
}
