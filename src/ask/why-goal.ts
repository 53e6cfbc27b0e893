import { compare, toBase } from '../calc/quantity.ts';
import type { Figure as Read } from '../calc/read/reading.ts';
import { unitRow } from '../calc/units.ts';
import { boundsOf } from '../rules/judge.ts';
import type { Figure, LimitRecord, QuantityRecord } from '../rules/shapes.ts';
import type { Engine } from './engine.ts';
import type { Goal, Scored } from './goal.ts';
import type { Sentence } from './sentence.ts';

const kinds = new Set(['limit', 'practice', 'quantity'] as const);

/** A figure that is the rule's own says as much as a word that only it is asked by. */
const ownFigure = 8;
/** What a cue heard in full is worth beside its words apart. */
const inFull = 1;
/** A rule must share this much of what is asked. */
const enough = { score: 4, share: 0.34 };

/**
 * What a "why" is about: of all rules and quantities the one nearest by its words, by a cue heard in full, and by a figure
 * that is its own: "why only an inch", "why 50 degrees". Undefined when none is near.
 */
export function whyGoal(engine: Engine, sentence: Sentence, found: readonly Scored[]): Goal | undefined {
  if (found[0]?.kind === 'fault') return undefined;
  const figures = sentence.figures.flatMap((at) => {
    const token = sentence.tokens[at];
    return token?.kind === 'figure' ? [token.figure] : [];
  });
  const scores = new Map<string, { goal: Goal; score: number; share: number }>();
  const add = (goal: Goal, score: number, share: number): void => {
    const key = `${goal.kind}/${goal.id}`;
    const before = scores.get(key) ?? { goal, score: 0, share: 0 };
    scores.set(key, { goal, score: before.score + score, share: Math.max(before.share, share) });
  };
  for (const { kind, id, score, share } of engine.nearest().near(sentence, kinds)) add({ kind, id }, score, share);
  for (const { kind, id, score } of found)
    if ((kinds as ReadonlySet<string>).has(kind)) add({ kind, id }, inFull * score, 1);
  if (figures.length > 0)
    for (const goal of ofFigure(engine, figures)) add(goal, ownFigure, sentence.tokens.length < 5 ? 1 : 0);
  const rank = ({ goal }: { goal: Goal }): number => (goal.kind === 'quantity' ? 1 : 0);
  const [best] = [...scores.values()]
    .filter(({ score, share }) => score >= enough.score && share >= enough.share)
    .sort((a, b) => b.score - a.score || rank(a) - rank(b) || (a.goal.id < b.goal.id ? -1 : 1));
  return best && { kind: best.goal.kind, id: best.goal.id };
}

/** Rules and quantities that a figure is the bound or the default of. */
function ofFigure({ knowledge: { limits, quantities } }: Engine, figures: readonly Read[]): Goal[] {
  const isIt = (own: Figure | undefined): boolean =>
    own !== undefined &&
    figures.some(({ number, unit }) =>
      unit === undefined
        ? number === own.number
        : unitRow(unit).dimension === unitRow(own.unit).dimension &&
          compare(toBase(number, unit), toBase(own.number, own.unit)) === 0,
    );
  const ofLimit = (rule: LimitRecord): boolean =>
    [rule.max, rule.min, ...(rule.cases ?? []).flatMap((each) => [each.max, each.min])].some(
      (bound) => bound && !('id' in bound) && isIt(bound),
    ) || boundsOf(rule).some((id) => isIt(quantities.get(id)?.default));
  const ofQuantity = (record: QuantityRecord): boolean => isIt(record.default);
  return [
    ...[...limits.values()].filter((rule) => rule.cues && ofLimit(rule)).map(({ id }): Goal => ({ kind: 'limit', id })),
    ...[...quantities.values()].filter(ofQuantity).map(({ id }): Goal => ({ kind: 'quantity', id })),
  ];
}
