import { work as shipped, type Work } from '../rules/work.ts';
import { type Cue, isHeard } from './cue.ts';
import type { Sentence } from './sentence.ts';
import { asksNext, stageSaid, stepsNamed } from './step-stage.ts';
import { tradeCue } from './trade-cue.ts';
import { figureAsks } from './wording/asking.ts';
import { repairAsks } from './wording/repair-asks.ts';
import { stepAsks, stepFrames } from './wording/step-asks.ts';

/** Something of the work that can be asked for. */
export interface WorkGoal {
  readonly kind: 'step' | 'fault' | 'defect' | 'repair';
  /** A record's id; for steps also `next`, `done`, `whole`, `rest`, and `before-`, `after-`, `rest-`, `between-`, `done-` and `skip-` with the id of a step. */
  readonly id: string;
  readonly cues: readonly string[];
}

const frames = ['before', 'after', 'rest', 'between', 'done', 'skip'] as const;

/** Everything that can be asked of the work, with its cues, for the index of goals. What is found is held against `suits` too. */
export function workGoals({ steps, faults, defects, repairs }: Work = shipped): WorkGoal[] {
  const inFrame = (frame: keyof typeof stepFrames, named: readonly string[]): string[] =>
    named.flatMap((name) => stepFrames[frame].map((line) => line.replace('NAME', name)));
  const framed = (id: string, named: readonly string[]): WorkGoal[] =>
    frames.map((frame) => ({ kind: 'step', id: `${frame}-${id}`, cues: inFrame(frame, named) }));
  return [
    ...(['whole', 'next', 'rest', 'done'] as const).map((id): WorkGoal => ({ kind: 'step', id, cues: stepAsks[id] })),
    ...[...steps.values()].flatMap(({ id, cues = [], named, doneCues, atCues = [] }): WorkGoal[] => [
      { kind: 'step', id, cues: [...cues, ...inFrame('one', named)] },
      ...framed(id, named),
      { kind: 'step', id: `done-${id}`, cues: [...doneCues, ...atCues] },
    ]),
    ...[...faults.values()].map(({ id, cues }): WorkGoal => ({ kind: 'fault', id, cues })),
    ...[...defects.values()].map(
      ({ id, cues }): WorkGoal => ({
        kind: 'defect',
        id,
        cues,
      }),
    ),
    { kind: 'repair', id: 'which', cues: repairAsks.which },
    ...[...repairs.values()].map(({ id, cues = [] }): WorkGoal => ({ kind: 'repair', id, cues })),
  ];
}

/** What a defect or a fault is only the setting of: "tons to fill two ruts". */
const amounts = ['ton', 'gallon', 'cost'];
/** What is asked for by name, so that what stands before or after a step is only when: "what thickness after laying 20 tons". */
const figureNames = [
  'thickness',
  'depth',
  'width',
  'rate',
  'speed',
  'temperature',
  'spacing',
  'volume',
  'size',
  ...amounts,
];
/** Who asks for the steps of something has not done it. */
const tellHow = ['step', 'checklist', 'procedure', 'how', 'why', 'who', 'order'];
const whatFigure = tradeCue(`what+${figureNames.join('|')}`);

/**
 * False for a goal of the work that the form of the sentence rules out: one that asks for a figure, or, for a statement of
 * what is done and for what stands before or after it, one that asks yes or no, or why. Other goals suit, but where
 * something is said to be done and no more is asked than what comes next.
 */
export function suits(
  { kind, id, cue }: { readonly kind: string; readonly id: string; readonly cue: Cue },
  sentence: Sentence,
): boolean {
  const { places } = sentence;
  const framed =
    kind === 'step' && (['next', 'rest', 'done'].includes(id) || frames.some((frame) => id.startsWith(`${frame}-`)));
  if (!framed && isAfterNext(sentence) && !asksLeaveLast(sentence)) return false;
  const needs = cue.needs.flat(2);
  // "15 ton loads, inch lift, how far does one go" asks for no leave.
  if (kind === 'limit' && asksFigure(needs, sentence)) return false;
  if (!isWork(kind)) return true;
  if (asksFigure(needs, sentence)) return false;
  if (kind === 'defect' || kind === 'fault') return !amounts.some((word) => places.has(word) && !needs.includes(word));
  const around = framed && /^(?:before|after|rest|between)-/.test(id);
  if (around && figureNames.some((word) => places.has(word) && !needs.includes(word))) return false;
  if (
    id.startsWith('done-') &&
    !asksNext(sentence) &&
    figureNames.some((word) => !amounts.includes(word) && places.has(word) && !needs.includes(word))
  )
    return false;
  if (/^(?:before|after)-/.test(id) && !isBefore(id.split('-')[0]!, cue, sentence)) return false;
  if (
    id.startsWith('done-') &&
    !asksNext(sentence) &&
    sentence.tokens.some((token) => token.kind === 'mark' && token.text === '?')
  )
    return false;
  if (
    id.startsWith('done-') &&
    (['before', 'ahead-of', 'prior'].some((word) => places.has(word)) ||
      (tellHow.some((word) => places.has(word)) && !asksNext(sentence)))
  )
    return false;
  if (id === 'next' && (isHeard(whatFigure, sentence) || (places.has('if') && !stageSaid(sentence)))) return false;
  if (id.startsWith('between-') && stepsNamed(sentence).length < 2) return false;
  return !(
    framed &&
    id !== 'next' &&
    id !== 'rest' &&
    !id.startsWith('skip-') &&
    (places.has('@check') || places.has('@why'))
  );
}

/** True where a figure is asked for, by a word that is none of the cue's own. */
const asksFigure = (needs: readonly string[], { places }: Sentence): boolean =>
  figureAsks.some((word) => places.has(word) && !needs.includes(word));

/** True where "before" or "after" stands ahead of the name it goes with: "done with the last rolling, what is left before we go". */
const isBefore = (word: string, cue: Cue, { places }: Sentence): boolean =>
  cue.needs.flat(2).some((each) => each !== word && (places.get(each)?.at(-1) ?? -1) > (places.get(word)?.[0] ?? -1));

/** "The finish lift is next. Is that enough?": yes or no is asked at the end, and what comes next is said before. */
const asksLeaveLast = ({ places, tokens }: Sentence): boolean => {
  const from = tokens.findLastIndex(({ kind }, at) => kind === 'mark' && at < tokens.length - 1);
  return places.has('@check') && !['next', 'now', 'what'].some((word) => (places.get(word)?.at(-1) ?? -1) > from);
};

/** True for "mix and tack ordered, machines checked, next?": a statement of what is done, and the question what comes now. */
export const isAfterNext = (sentence: Sentence): boolean =>
  asksNext(sentence) &&
  ![...figureAsks, 'how', ...amounts, '#mass', '#volume', '#rate'].some((word) => sentence.places.has(word)) &&
  stageSaid(sentence) !== undefined;

/** True for the kinds of goal that are of the work. */
export const isWork = (kind: string): kind is WorkGoal['kind'] =>
  kind === 'step' || kind === 'fault' || kind === 'defect' || kind === 'repair';
