import { type Entry, layingOf, sequence } from '../rules/procedure.ts';
import { denial } from '../rules/words-kin.ts';
import { type Work, work } from '../rules/work.ts';
import type { Cue } from './cue.ts';
import { cueIndex, heardIn } from './cue-index.ts';
import { laid } from './laid.ts';
import type { Span } from './reply.ts';
import type { Sentence } from './sentence.ts';
import { isCount, isSmall } from './token.ts';
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

/** A cue of a stage of the work: its name, that it is done, that it is being done; or the question what comes next. */
interface StageCue {
  readonly stage: number;
  readonly says: 'named' | 'done' | 'at' | 'next';
  /** Place among the cues of its stage. */
  readonly at: number;
}

const stages = sequence().map(({ id }) => id);

function stageLines({ steps }: Work): { readonly text: string; readonly of: StageCue }[] {
  const lines = (stage: number, says: StageCue['says'], cues: readonly string[]) =>
    cues.map((text, at) => ({ text, of: { stage, says, at } }));
  return stages
    .flatMap((id, stage) => {
      const { doneCues = [], atCues = [], named = [] } = steps.get(id) ?? {};
      const frames = named.flatMap((name) => stepFrames.done.map((line) => line.replace('NAME', name)));
      return [
        ...lines(stage, 'named', named),
        ...lines(stage, 'done', [...doneCues, ...frames]),
        ...lines(stage, 'at', atCues),
      ];
    })
    .concat(lines(-1, 'next', stepAsks.next));
}

/** The cues of all stages. */
export const stageIndex = cueIndex(() => stageLines(work), tradeCue, laid?.stages);

/** The farthest stage that a sentence says is done, or else being done. */
export const stageSaid = (sentence: Sentence): Said | undefined =>
  farthest(sentence, 'done') ?? farthest(sentence, 'at') ?? spokenOf(sentence);

type StageHeard = StageCue & { readonly cue: Cue };

/** What was heard in sentences: a question is held against these cues again for each goal found in it. */
const heard = new WeakMap<Sentence, readonly StageHeard[]>();

function stagesHeard(sentence: Sentence): readonly StageHeard[] {
  const before = heard.get(sentence);
  if (before) return before;
  const found = heardIn(stageIndex, sentence).map(({ of, cue }) => ({ ...of, cue }));
  heard.set(sentence, found);
  return found;
}

/** True for a question what comes next. */
export const asksNext = (sentence: Sentence): boolean =>
  endsOnNow(sentence) || stagesHeard(sentence).some(({ says }) => says === 'next');

/** "Mix is dumped. Now?" */
function endsOnNow({ tokens }: Sentence): boolean {
  const last = tokens.findLast((token) => token.kind !== 'mark');
  return last?.kind === 'word' && (last.head === 'now' || last.head === 'next') && tokens.at(-1)?.kind === 'mark';
}

/** "Just got through sweeping, what's up next": of who asks what comes next, what they speak of is behind them, unless they deny it. */
const spokenOf = (sentence: Sentence): Said | undefined =>
  asksNext(sentence) && !notYet.some((word) => sentence.places.has(word)) ? farthest(sentence, 'named') : undefined;

/** Words that keep what is spoken of from being done. */
const notYet = ['before', 'until', 'if', 'when', 'how', 'between', ...denial.split(' ')];

/** Of the cues heard that say this, the first one of the farthest stage; of what is not said to be going on, it is done. */
function farthest(sentence: Sentence, says: 'named' | 'done' | 'at'): Said | undefined {
  let best: StageHeard | undefined;
  for (const each of stagesHeard(sentence)) {
    if (each.says !== says || (best && (best.stage > each.stage || (best.stage === each.stage && best.at <= each.at))))
      continue;
    best = each;
  }
  return best && { step: stages[best.stage]!, done: says !== 'at', from: placeOf(best.cue, sentence) };
}

/** The steps that a sentence names, in the order of the work: "between the tack and the first lift". */
export function stepsNamed(sentence: Sentence): string[] {
  const named = new Set(stagesHeard(sentence).flatMap(({ stage, says }) => (says === 'named' ? [stage] : [])));
  return stages.filter((_, stage) => named.has(stage));
}

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
    if (word?.kind === 'word' && ordinals.has(word.head)) return { lift: ordinals.get(word.head)!, from: word.at };
    if (word?.kind === 'word' && lastWords.includes(word.head)) return { lift: 'last', from: word.at };
    const after = tokens[at + 1];
    if (after?.kind === 'figure' && after.figure.unit === undefined && Number.isInteger(after.figure.number))
      return { lift: after.figure.number, from: after.at };
    if (after?.kind === 'word' && after.head === 'one') return { lift: 1, from: after.at };
  }
  // "The second one is rolled", where the lifts were spoken of before.
  for (const [at, token] of tokens.entries())
    if (token.kind === 'word' && ordinals.has(token.head) && isOne(tokens[at + 1]))
      return { lift: ordinals.get(token.head)!, from: token.at };
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
    return (
      token?.kind === 'figure' && !token.figure.unit && Number.isInteger(token.figure.number) && !isCount(tokens, at)
    );
  };
  const lift = (places.get('lift') ?? []).map((at) => at + 1).find((at) => whole(at) || isOne(tokens[at]));
  if (lift === undefined || !stageSaid(sentence)) return {};
  const of = (places.get('of') ?? []).find((at) => at > lift && whole(after(at)));
  return { ...(whole(lift) ? { lift } : {}), ...(of === undefined ? {} : { count: after(of) }) };
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
