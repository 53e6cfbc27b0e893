import type { Known, Solution, Solved } from './fact.ts';
import { bareGround, type Layer, overlaid } from './ground.ts';
import type { Network } from './spread.ts';
import { fromKnown, work } from './work.ts';

export { type Contradiction, contradictions } from './contradictions.ts';
export { derivation, restsOn } from './derivation.ts';
export type { Known, Solution, Solved } from './fact.ts';
export { bareGround, type Ground, overlaid } from './ground.ts';
export { missing } from './missing.ts';
export { type Network, network } from './spread.ts';

/**
 * Everything that follows from what is known: what is said before what is assumed, then the fewest steps. The order of
 * the facts does not matter; of a fact given twice the first one said stands, else the last one assumed. `deadEnd` is
 * called when a way had no answer for these figures, so that another one had to be found.
 */
export const solve = (net: Network, facts: readonly Known[], deadEnd?: Layer['deadEnd']): Solution =>
  overlaid(bareGround(net), { facts, deadEnd });

/**
 * The steps of an earlier solution taken again with other figures of the same facts, over the same assumed ones. Undefined
 * when one of them has no answer this time: then the facts must be solved afresh.
 */
export function reworked(
  net: Network,
  facts: readonly Known[],
  { assumed, steps }: { readonly assumed: ReadonlyMap<string, Solved>; readonly steps: readonly Solved[] },
): Solution | undefined {
  const solved = new Map(assumed);
  // Backward, so that of a fact given twice the first one stands.
  for (let at = facts.length - 1; at >= 0; at--) {
    const fact = facts[at]!;
    solved.set(fact.id, fromKnown(fact, net.counted.has(fact.id)));
  }
  const factOf = (id: string): Solved | undefined => solved.get(id);
  for (const { id, by } of steps) {
    const fact = work(by!, factOf, net.counted.has(id));
    if (!fact) return undefined;
    solved.set(id, fact);
  }
  return solved;
}
