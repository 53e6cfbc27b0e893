import { read } from '../calc/read/read.ts';
import type { Item } from '../calc/read/reading.ts';
import { type Cue, readCue } from './cue.ts';
import { cueIndex, heardIn, isTouched } from './cue-index.ts';
import { emergencies } from './emergencies.generated.ts';
import type { Engine } from './engine.ts';
import { laid } from './laid.ts';
import { longestQuestion } from './longest.ts';
import { blank } from './refusal.ts';
import type { Job, Reply } from './reply.ts';
import { capital } from './say.ts';
import { basisOf, excerptOf } from './search/shown.ts';
import { type Sentence, sentenceOf } from './sentence.ts';
import { isSmall } from './token.ts';
import { headOf, vocabularyOf } from './vocabulary.ts';
import { cardWords } from './wording/cards.ts';
import {
  asking,
  askingLeave,
  doubtHeads,
  emergencyHeads,
  emergencyPlain,
  emergencySmall,
  somebodyKnown,
  supposing,
} from './wording/emergency-words.ts';

/** A part of a sentence between commas, and its words as they were typed. */
interface Clause extends Sentence {
  readonly typed: readonly string[];
}

const cardsById = new Map(emergencies.map((card) => [card.id, card]));
const head = headOf(emergencyHeads);
/** The cues of all emergencies. */
export const index = cueIndex(
  () => emergencies.flatMap(({ id, emergency }) => (emergency?.cues ?? []).map((text) => ({ text, of: id }))),
  (text) => readCue(text, head),
  laid?.emergencies,
);
/** The one to act on first at the head. */
const byRank = [...emergencies].sort((a, b) => a.emergency!.rank - b.emergency!.rank).map(({ id }) => id);

const small = new Set(emergencySmall);
/** The words by which emergencies are told. */
export const vocabulary = vocabularyOf(
  { ...doubtHeads, ...emergencyHeads },
  () => [index.words, emergencyPlain, supposing, asking, askingLeave, somebodyKnown, emergencySmall].flat(),
  [],
  laid?.emergencyWords,
);

/**
 * The emergencies that a text says are happening now, by the ids of their cards, the one to act on first at the head. What
 * is supposed, asked about the law, or told of another day is none. Takes anything; never throws. `reading` is the question
 * as it was read, where it has been.
 */
export function emergenciesIn(question: unknown, reading?: readonly Item[]): string[] {
  if (typeof question !== 'string') return [];
  const text = question
    .slice(0, longestQuestion)
    .replace(/['’]s\b/g, '')
    .replace(/\b911\b/g, 'ambulance');
  const items = text === question && reading ? reading : read(text);
  const whole = sentenceOf(items, vocabulary, small);
  // Nearly always there is no such word in it, and its parts need not be looked at.
  if (whole.places.has('told-of') || !isTouched(index, whole)) return [];
  const told = new Set(
    split(items, '.?!;\n').flatMap((part) => {
      const clauses = split(part, ',:()').map(clauseOf);
      return clauses.flatMap((clause, at) => (isSupposed(clauses.slice(0, at)) ? [] : toldIn(clause)));
    }),
  );
  return byRank.filter((id) => told.has(id));
}

/** The answer to a text that tells of an emergency; undefined for any other. To be asked before all else, a broken file of rules included. */
export function emergencyIn(question: unknown, engine: Engine, job: Job, reading?: readonly Item[]): Reply | undefined {
  const [first, ...others] = emergenciesIn(question, reading);
  return first === undefined ? undefined : emergencyReply([first, ...others], engine, job);
}

/** Answers an emergency: the number, what to do first, what to tell them, then the rest of the card. Asks nothing. */
export function emergencyReply(ids: readonly [string, ...string[]], engine: Engine, job: Job): Reply {
  const [id, ...others] = ids;
  const card = cardsById.get(id)!;
  const first = card.emergency?.first ?? '';
  return {
    ...blank,
    kind: 'card',
    topic: id,
    text: [`${cardWords.callNow} ${first}`, cardWords.tellThem, card.text, cardWords.basis(basisOf(card))].join('\n'),
    cards: others.map((other) => {
      const also = cardsById.get(other)!;
      return {
        id: other,
        title: capital(also.title),
        excerpt: excerptOf(also.emergency?.first ?? also.text),
        score: 1,
      };
    }),
    cautions: [cardWords.notADoctor],
    rules: { version: engine.knowledge.version },
    job,
  };
}

function clauseOf(items: readonly Item[]): Clause {
  const typed = items.flatMap((item) => (item.kind === 'word' ? [item.text] : []));
  return { ...sentenceOf(items, vocabulary, small), typed };
}

const isSupposed = (before: readonly Clause[]): boolean =>
  before.some(({ places }) => supposing.some((word) => places.has(word)));

/** The emergencies that one part of a sentence says as a thing that is so. */
const toldIn = (clause: Clause): string[] =>
  heardIn(index, clause).flatMap(({ cue, of }) => (isSo(cue, clause) ? [of] : []));

function isSo(cue: Cue, clause: Clause): boolean {
  const { places } = clause;
  if (places.has('not-so') || places.has('long-past')) return false;
  const firstOf = (words: readonly string[]): number => Math.min(...words.flatMap((word) => places.get(word) ?? []));
  const last = Math.max(...cue.needs.flat().map(firstOf));
  if (supposing.some((word) => (places.get(word)?.[0] ?? last) < last)) return false;
  return !isQuestion(clause) || somebodyKnown.some((word) => clause.typed.includes(word));
}

/** True for a part that opens as a question does; "what do I do" before the news is a cry for help, and none. */
function isQuestion({ tokens }: Sentence): boolean {
  const words = tokens.flatMap((token) => (token.kind === 'word' && !isSmall(token, small) ? [token.head] : []));
  const from = words[0] === 'what-do' ? 1 : 0;
  if (askingLeave.includes(words.at(-1) ?? '')) return true;
  return asking.includes(words[from] ?? '') || (from === 1 && ['with', 'about'].includes(words[1] ?? ''));
}

function split(items: readonly Item[], marks: string): Item[][] {
  const parts: Item[][] = [[]];
  for (const item of items) {
    if (item.kind === 'mark' && marks.includes(item.text)) parts.push([]);
    else parts.at(-1)!.push(item);
  }
  return parts.filter((part) => part.length > 0);
}
