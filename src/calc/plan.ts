import { derivation, type Known, type Network, reworked, type Solution, type Solved, solve } from './solve.ts';

/** How the quantities wanted follow from facts of certain ids. */
interface Way {
  /** What is assumed on the way. */
  readonly assumed: ReadonlyMap<string, Solved>;
  readonly steps: readonly Solved[];
}

/**
 * Works a few quantities for many sets of facts that differ in their figures and not in what they are of, as the patches
 * of a job do. Which way each quantity is reached depends on what is known alone, so the way found for the first set is
 * taken again for the others. A set for which a step has no answer is solved afresh, and its way is not taken for others.
 *
 * `complete` gives the facts with all that is assumed beside them. It may look at what the facts are of, not at their
 * figures. The result holds the facts, the quantities `wanted` and what these rest on.
 */
export function solver(
  net: Network,
  wanted: readonly string[],
  complete: (facts: readonly Known[]) => readonly Known[],
): (facts: readonly Known[]) => Solution {
  const ways = new Map<string, Way>();
  return (facts) => {
    let key = '';
    for (const { id } of facts) key += `${id},`;
    const known = ways.get(key);
    const again = known && reworked(net, facts, known);
    if (again) return again;
    let straight = known === undefined;
    const solved = solve(net, complete(facts), () => {
      straight = false;
    });
    const way = wayTo(solved, wanted, facts);
    if (straight) {
      if (ways.size >= mostWays) ways.clear();
      ways.set(key, way);
    }
    return reworked(net, facts, way) ?? solved;
  };
}

/** Ways that are kept; a job has as many as its patches were told of in different words. */
const mostWays = 200;

function wayTo(solved: Solution, wanted: readonly string[], facts: readonly Known[]): Way {
  const steps: Solved[] = [];
  for (const id of wanted) derivation(solved, id, steps);
  const given = new Set(facts.map(({ id }) => id));
  const needed = [...wanted, ...steps.flatMap(({ by }) => by!.needs)];
  const assumed = needed.flatMap((id) => {
    const fact = solved.get(id);
    return fact && !fact.by && !given.has(id) ? [[id, fact] as const] : [];
  });
  return { assumed: new Map(assumed), steps };
}
