import { boundsOf } from '../rules/judge.ts';
import type { QuantityRecord } from '../rules/shapes.ts';
import { type Binding, type Bound, bind } from './bind.ts';
import type { Engine } from './engine.ts';
import type { Goal } from './goal.ts';
import type { Context } from './role.ts';
import type { Sentence } from './sentence.ts';

/** Figures of one quantity that are to be added up, each as one: "grader 145 an hour, roller 80 an hour". */
export function added(bound: readonly Bound[]): Bound[] {
  return bound.flatMap((each) => {
    if (!each.record.summed) return [each];
    const all = bound.filter(({ record, unit }) => record === each.record && unit === each.unit);
    if (all.length < 2) return [each];
    if (all[0] !== each) return [];
    const number = all.reduce((sum, { figure }) => sum + figure.number, 0);
    return [{ ...each, figure: { ...each.figure, number } }];
  });
}

/** Of a limit, the bounds that are worked out: their names before a figure mean the one that is judged. */
export function meantBy(
  { knowledge }: Engine,
  goal: Goal | undefined,
): ReadonlyMap<string, QuantityRecord> | undefined {
  const rule = goal?.kind === 'limit' ? knowledge.limits.get(goal.id) : undefined;
  const bounds = rule && boundsOf(rule).filter((id) => !knowledge.quantities.get(id)?.default);
  return bounds?.length ? new Map(bounds.map((id) => [id, rule!.on])) : undefined;
}

/** Figures in their roles: where what a limit judges has a figure of its own, the title of its bound means the bound. */
export function boundFor(sentence: Sentence, context: Context): Binding {
  const { meant } = context;
  const plain = meant && sentence.figures.length > 1 ? bind(sentence, { ...context, meant: undefined }) : undefined;
  const isOwn = plain?.bound.some(({ record, told }) => told && [...meant!.values()].includes(record));
  return plain && isOwn ? plain : bind(sentence, context);
}
