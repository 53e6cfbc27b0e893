import { type Entry, layingOf, sequence } from '../rules/procedure.ts';
import { denial } from '../rules/words-kin.ts';
import { work as shipped, type Work } from '../rules/work.ts';
import { type Cue, isHeard } from './cue.ts';
import type { Span } from './reply.ts';
import type { Sentence } from './sentence.ts';
import { isSmall } from './token.ts';
import { tradeCue } from './trade-cue.ts';
import { lastWords, ordinals, stepAsks, stepFrames } from './wording/step-asks.ts';

/** Where a sentence says the job is. */
export interface Said {
  readonly step: string;
  /** Done with it, or at it. */
  readonly done: boolean;
  readonly from: Span;
}

/** The lift a sentence speaks of: its number from the bottom, or the last one. */
export interface LiftSaid {
  readonly lift: number | 'last';
  readonly from: Span;
}

interface StageCues {
  readonly step: string;
  readonly named: readonly Cue[];
  readonly done: readonly Cue[];
  readonly at: readonly Cue[];
}

const cuesOf = ({ steps }: Work): StageCues[] =>
  sequence().map(({ id }) => {
    const { doneCues = [], atCues = [], named = [] } = steps.get(id) ?? {};
    const frames = named.flatMap((name) => stepFrames.done.map((line) => line.replace('NAME', name)));
    return {
      step: id,
      named: named.map((text) => tradeCue(text)),
      done: [...doneCues, ...frames].map((text) => tradeCue(text)),
      at: atCues.map((text) => tradeCue(text)),
    };
  });

const shippedCues = cuesOf(shipped);

/** The farthest stage that a sentence says is done, or else being done. */
export function stageSaid(sentence: Sentence, work?: Work): Said | undefined {
  return work ? stageIn(sentence, work) : heardOnce(stages, sentence, () => stageIn(sentence));
}

/** What was heard in sentences: a question is held against these cues again for each goal found in it. */
const stages = new WeakMap<Sentence, { readonly is: Said | undefined }>();
const nexts = new WeakMap<Sentence, { readonly is: boolean }>();

function heardOnce<T>(heard: WeakMap<Sentence, { readonly is: T }>, sentence: Sentence, hear: () => T): T {
  const before = heard.get(sentence);
  if (before) return before.is;
  const is = hear();
  heard.set(sentence, { is });
  return is;
}

function stageIn(sentence: Sentence, work?: Work): Said | undefined {
  const all = [...(work ? cuesOf(work) : shippedCues)].reverse();
  return farthest(all, sentence, true) ?? farthest(all, sentence, false) ?? spokenOf(all, sentence);
}

const nextCues = stepAsks.next.map((text) => tradeCue(text));

/** True for a question what comes next. */
export const asksNext = (sentence: Sentence): boolean =>
  heardOnce(nexts, sentence, () => endsOnNow(sentence) || nextCues.some((cue) => isHeard(cue, sentence)));

/** "Mix is dumped. Now?" */
function endsOnNow({ tokens }: Sentence): boolean {
  const last = tokens.findLast((token) => token.kind !== 'mark');
  return last?.kind === 'word' && (last.head === 'now' || last.head === 'next') && tokens.at(-1)?.kind === 'mark';
}

/** "Just got through sweeping, what's up next": of who asks what comes next, what they speak of is behind them, unless they deny it. */
function spokenOf(stages: readonly StageCues[], sentence: Sentence): Said | undefined {
  if (!asksNext(sentence) || notYet.some((word) => sentence.places.has(word))) return undefined;
  for (const { step, named } of stages) {
    const cue = named.find((each) => isHeard(each, sentence));
    if (cue) return { step, done: true, from: placeOf(cue, sentence) };
  }
  return undefined;
}

/** Words that keep what is spoken of from being done. */
const notYet = ['before', 'until', 'if', 'when', 'how', 'between', ...denial.split(' ')];

function farthest(stages: readonly StageCues[], sentence: Sentence, done: boolean): Said | undefined {
  for (const stage of stages) {
    const cue = (done ? stage.done : stage.at).find((each) => isHeard(each, sentence));
    if (cue) return { step: stage.step, done, from: placeOf(cue, sentence) };
  }
  return undefined;
}

/** The steps that a sentence names, in the order of the work: "between the tack and the first lift". */
export const stepsNamed = (sentence: Sentence): string[] =>
  shippedCues.flatMap(({ step, named }) => (named.some((cue) => isHeard(cue, sentence)) ? [step] : []));

function placeOf(cue: Cue, { places, tokens }: Sentence): Span {
  const word = cue.needs.flat(2).find((each) => places.has(each));
  return tokens[places.get(word ?? '')?.[0] ?? 0]?.at ?? [0, 0];
}

/** Which lift is meant: "second lift", "lift 2", "the last lift". */
export function liftSaid(sentence: Sentence): LiftSaid | undefined {
  const { tokens, small, places } = sentence;
  for (const at of places.get('lift') ?? []) {
    let before = at - 1;
    while (isSmall(tokens[before], small)) before--;
    const word = tokens[before];
    if (word?.kind === 'word' && ordinals[word.head]) return { lift: ordinals[word.head]!, from: word.at };
    if (word?.kind === 'word' && lastWords.includes(word.head)) return { lift: 'last', from: word.at };
    const after = tokens[at + 1];
    if (after?.kind === 'figure' && after.figure.unit === undefined && Number.isInteger(after.figure.number))
      return { lift: after.figure.number, from: after.at };
  }
  // "The second one is rolled", where the lifts were spoken of before.
  for (const [at, token] of tokens.entries())
    if (token.kind === 'word' && ordinals[token.head] && isOne(tokens[at + 1]))
      return { lift: ordinals[token.head]!, from: token.at };
  return undefined;
}

const isOne = (token: Sentence['tokens'][number] | undefined): boolean =>
  token?.kind === 'word'
    ? token.head === 'one'
    : token?.kind === 'figure' && token.figure.unit === undefined && token.figure.number === 1;

/**
 * Places of the figures that only number a lift: the 2 of "lift 2 is down", and the 3 of "lift 2 of 3", which is how many
 * there are. They are no thickness, length or load.
 */
export function liftFigures(sentence: Sentence): { readonly lift?: number; readonly count?: number } {
  const { tokens, places, after } = sentence;
  const whole = (at: number): boolean => {
    const token = tokens[at];
    return token?.kind === 'figure' && !token.figure.unit && Number.isInteger(token.figure.number);
  };
  const lift = (places.get('lift') ?? []).map((at) => at + 1).find(whole);
  if (lift === undefined || !stageSaid(sentence)) return {};
  const of = (places.get('of') ?? []).find((at) => at > lift && whole(after(at)));
  return { lift, ...(of === undefined ? {} : { count: after(of) }) };
}

const laying = new Set(['first-lift', 'next-lift', 'finish-lift']);

/**
 * The entry that a stage means here: of a lift the one named, else the one the job is at. Undefined for a lift that the
 * patch has not.
 */
export function entryOf(
  step: string,
  lift: LiftSaid['lift'] | undefined,
  at: Entry | undefined,
  count?: number,
): Entry | undefined {
  const number = lift === 'last' ? count : (lift ?? at?.lift);
  if (laying.has(step)) {
    if (lift === 'last') return { id: 'finish-lift', ...(count === undefined ? {} : { lift: count }) };
    const first = step === 'first-lift' ? 1 : step === 'finish-lift' ? count : undefined;
    const meant = lift ?? (at && laying.has(at.id) ? at.lift : undefined) ?? first;
    return meant === undefined ? { id: step } : layingOf(meant, count);
  }
  if (step !== 'roll-lift') return { id: step };
  if (lift === 'last' || at?.id === 'finish-lift' || at?.id === 'final-roll') return { id: 'final-roll' };
  if (number === undefined) return { id: 'roll-lift' };
  if (count !== undefined && number >= count) return number === count ? { id: 'final-roll' } : undefined;
  return { id: 'roll-lift', lift: number };
}
