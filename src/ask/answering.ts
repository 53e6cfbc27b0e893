import { read } from '../calc/read/read.ts';
import type { Item } from '../calc/read/reading.ts';
import { restsOn } from '../calc/solve.ts';
import { mayHaveReadings } from '../calc/survey/hint.ts';
import { conflicts } from '../rules/conflicts.ts';
import { whatFollows } from '../rules/start.ts';
import { answer, hasReason } from './answer.ts';
import { aboutPatch } from './book/about-patch.ts';
import { heardOfBook, speaksOfJob } from './book/hear.ts';
import { isOfPatch, jobWith, withPatch } from './book/talk-book.ts';
import type { SheetOfBook } from './book/talk-reply.ts';
import { commandsIn } from './commands.ts';
import { conversion } from './convert.ts';
import { emergencyIn } from './emergency.ts';
import type { Engine } from './engine.ts';
import { type Fact, factsOfJob, jobFacts, knownFrom } from './facts.ts';
import { type Goal, goalText } from './goal.ts';
import { emptyJob, readJob } from './job.ts';
import { longestQuestion } from './longest.ts';
import { patchesReply } from './patches.ts';
import { problemWith } from './problems.ts';
import type { Priced } from './rates/answer.ts';
import { blank, refuse } from './refusal.ts';
import type { Job, Reply, Request, TalkBook } from './reply.ts';
import type { Parts } from './scene.ts';
import { sentenceOf } from './sentence.ts';
import { isStatement } from './stated.ts';
import { type Understanding, understand } from './understand.ts';
import { unitsOf } from './units.ts';
import { talk } from './wording/book-talk.en.ts';
import { en } from './wording/en.ts';

/** A job as it was sent back, with only the facts that the records know. Undefined for one that cannot be read. */
export function jobKnownTo({ knowledge }: Engine, sent: unknown): Job | undefined {
  const job = readJob(sent);
  return job && { ...job, facts: jobFacts(factsOfJob(job, knowledge)) };
}

/** True for a question that the quiz part will be called for, should it not be an emergency. */
export function asksForQuiz({ vocabulary, small }: Engine, question: string): boolean {
  return commandsIn(sentenceOf(readOnce(question), vocabulary, small)).has('quiz');
}

/**
 * Answers a typed question by an engine and its parts. Pure and synchronous: the same request gives the same reply. The
 * reply's `job` is to be sent with the next question. Never throws on what a person sends; a question that cannot be
 * answered gets a reply that says why.
 */
export function askIn(engine: Engine, request: Request, parts: Parts, onto?: Onto): Reply {
  const sent = jobKnownTo(engine, request.job);
  const job = onto ? { ...(sent ?? emptyJob), facts: onto.facts, book: onto.book } : sent;
  const items = typeof request.question === 'string' && !request.units ? readOnce(request.question) : undefined;
  const emergency = parts.cards?.named(request.question)
    ? undefined
    : emergencyIn(request.question, engine, job ?? emptyJob, items);
  if (emergency) return emergency;
  const notes = [job ? undefined : en.jobDropped, request.lang === 'es' ? en.englishOnly : undefined].filter(
    (note) => note !== undefined,
  );
  const reply = ruledBy(engine, { request, job: job ?? emptyJob, parts, items, onto });
  return notes.length ? { ...reply, text: [...notes, reply.text].join('\n') } : reply;
}

/** A job that a talk is held on, in the place of what the talk has put on one itself. */
export interface Onto {
  /** Facts of the talk under those of the job. */
  readonly facts: Job['facts'];
  /** Its patches, however many they are. */
  readonly book: TalkBook;
  readonly sheetOf: SheetOfBook;
}

/** What was asked, with all that answering it takes. */
interface Asked {
  readonly request: Request;
  readonly job: Job;
  readonly parts: Parts;
  /** The question as it was read already, where no units were named to read it by. */
  readonly items: readonly Item[] | undefined;
  /** What it was taken to mean, where that is settled. */
  readonly heard?: Priced['heard'];
  readonly onto?: Onto | undefined;
}

const readOnce = (question: string): Item[] => read(question.slice(0, longestQuestion));

/** What is said where a part that is needed is not there: nothing. Whoever left it out asks again with it. */
const partMissing = (engine: Engine, { job }: Asked): Reply => refuse('no-rule', '', job, engine);

/** By the agency's rules where the request brings them. */
function ruledBy(engine: Engine, asked: Asked): Reply {
  const { request, job, parts } = asked;
  if (request.agency === undefined || request.agency === null) return rated(engine, asked);
  if (!parts.files) return partMissing(engine, asked);
  return parts.files.ruled(engine, request.agency, job, (own) => rated(own, asked));
}

/** By published rates where the request brings them. */
function rated(engine: Engine, asked: Asked): Reply {
  const { request, job, parts } = asked;
  if (request.rates === undefined || request.rates === null) return answered(engine, asked);
  if (!parts.files) return partMissing(engine, asked);
  return parts.files.rated(engine, request, job, (priced) =>
    answered(engine, priced ? { ...asked, ...priced, items: undefined } : asked),
  );
}

function answered(engine: Engine, asked: Asked): Reply {
  const { request: sent, job, parts, onto } = asked;
  const { question } = sent;
  if (typeof question !== 'string' || question.trim() === '') return refuse('no-goal', en.empty, job, engine);
  if (question.length > longestQuestion) return refuse('out-of-scope', en.tooLong(longestQuestion), job, engine);

  if (!parts.readings && (job.survey || mayHaveReadings(question))) return partMissing(engine, asked);
  const readings = parts.readings?.hear(engine, sent, job);
  if (readings && 'kind' in readings) return readings;
  const request = readings ? { ...sent, question: readings.question } : sent;
  const heard = asked.heard ?? understand(engine, request, job, readings?.fresh ? undefined : asked.items);
  if (!parts.book && (job.book || speaksOfJob(heardOfBook(heard.sentence, engine)))) return partMissing(engine, asked);
  const told = parts.book?.reply(engine, request, job, heard, onto?.sheetOf);
  if (told) return told;
  const patch = job.book && aboutPatch(engine, request, job, heard);
  if (patch) return ofPatch(engine, patch, parts, !onto || isStatement(heard.sentence));
  const inForce = readings && parts.readings?.with(readings, heard);
  const understood = upToDate(engine, inForce?.understood ?? heard, job.checked);
  const { goal, facts, turn, stage, units, commands } = understood;
  const next: Job = {
    v: 1,
    turn,
    facts: jobFacts(withoutSupposed(engine, goal, facts)),
    ...(goal ? { goal: goalText(goal) } : {}),
    ...(stage ? { stage } : {}),
    ...(goal && goal.id === job.checked ? { checked: goal.id } : {}),
    ...(units ? { units } : {}),
    ...(job.book ? { book: job.book } : {}),
    ...(inForce && !commands.has('start-over') ? { survey: inForce.heard.survey } : {}),
  };
  // "New patch" alone is no word on the surface, though "new" can be.
  const bare = understood.sentence.tokens.length <= 3 && understood.fresh.every((fact) => 'choice' in fact);
  if (commands.has('start-over') && (bare || understood.fresh.length === 0))
    return {
      ...blank,
      kind: 'card',
      topic: 'start-over',
      text: [en.startedOver, job.book?.patches.length ? talk.kept(job.book.patches.length) : '']
        .filter(Boolean)
        .join('\n'),
      rules: { version: engine.knowledge.version },
      job: jobWith(emptyJob, job.book),
    };
  const solved = whatFollows(engine.knowledge, knownFrom(facts), understood.open);
  const voice = {
    knowledge: engine.knowledge,
    solved,
    unit: unitsOf(engine, understood),
    isGiven: (id: string) => !(inForce && parts.readings?.gives(id)) && facts.some((fact) => fact.quantity === id),
  };
  const scene = { engine, understood, voice, job: next, request, parts };
  const card = parts.cards?.named(question);
  if (card) return { ...parts.cards!.reply(scene, card), given: [], job };
  if (commands.has('help') && isTalkAlone(understood))
    return {
      ...blank,
      kind: 'card',
      topic: 'help',
      text: en.help(en.scope, en.example),
      next: en.helpNext,
      rules: { version: engine.knowledge.version },
      job,
    };
  if (commands.has('quiz')) return parts.quiz(scene);
  if (understood.sentence.places.has('@why') && goal && hasReason(goal)) return answer(scene);
  if (inForce) return parts.readings!.tell(scene, inForce, () => problemWith(scene) ?? answer(scene));
  return conversion(scene) ?? patchesReply(scene) ?? problemWith(scene) ?? answer(scene);
}

/** A greeting or a cry for help with no question of the trade in it. */
const isTalkAlone = ({ goal, goalKept, fresh, sentence }: Understanding): boolean =>
  (!goal || goalKept) && fresh.length === 0 && sentence.tokens.length <= 6;

/** A question about one patch of the job, by its number: answered from its facts, and what is said of it is kept with it where it may be. */
function ofPatch(
  engine: Engine,
  { request, job, patch }: NonNullable<ReturnType<typeof aboutPatch>>,
  parts: Parts,
  keeps: boolean,
): Reply {
  const { book, ...alone } = job;
  const reply = answered(engine, { request, job: alone, parts, items: undefined });
  const own = reply.job.facts.filter(({ quantity }) => isOfPatch(engine.knowledge, quantity));
  const told = keeps && reply.given.some(({ quantity }) => isOfPatch(engine.knowledge, quantity));
  const next = told ? withPatch(book, { ...patch, facts: own }) : book;
  const note = told ? talk.changed(patch.label) : talk.forPatch(patch.label);
  return { ...reply, text: `${note}\n${reply.text}`, job: jobWith(reply.job, next) };
}

/** The facts without what a question about a limit only supposes. */
function withoutSupposed({ knowledge }: Engine, goal: Goal | undefined, facts: readonly Fact[]): readonly Fact[] {
  const supposed = goal?.kind === 'limit' ? knowledge.limits.get(goal.id)?.supposes?.map(({ id }) => id) : undefined;
  return supposed ? facts.filter(({ quantity, fresh }) => !(fresh && supposed.includes(quantity))) : facts;
}

/** What was said before gives way to what is said now, where the two cannot both be so: a new area takes the place of the old length and width. */
function upToDate({ knowledge }: Engine, understood: Understanding, checked: string | undefined): Understanding {
  const { goal, sentence } = understood;
  let { facts } = understood;
  // "Is 14 tons enough" is held against what was said before, and so is one more: "what about 15".
  const isChecked = sentence.places.has('@check') || goal?.id === checked;
  const asked = isChecked && facts.some(({ quantity, fresh }) => fresh && quantity === goal?.id);
  if (asked) return understood;
  for (let tries = 0; tries < 3 && facts.some(({ fresh }) => !fresh) && facts.some(({ fresh }) => fresh); tries++) {
    const solved = whatFollows(knowledge, knownFrom(facts));
    const [clash] = conflicts(knowledge, solved, goal?.id);
    const roots = clash && restsOn(solved, [clash.method.finds, ...clash.method.needs]);
    const kept = facts.filter((fact) => fact.fresh || !roots?.has(fact.quantity));
    if (!roots || kept.length === facts.length || !kept.some((fact) => fact.fresh && roots.has(fact.quantity))) break;
    facts = kept;
  }
  return { ...understood, facts };
}
