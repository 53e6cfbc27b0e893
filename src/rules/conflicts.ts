import { type Contradiction, contradictions, restsOn, type Solution, type Solved } from '../calc/solve.ts';
import type { Knowledge } from './knowledge.ts';

type Facts = Solution;

/**
 * Facts that cannot all be so, as the records have it. Of what the relations contradict this leaves out plans and rules
 * of thumb, figures found by one, stand-ins where the better relation can be worked, and a relation that only hands back
 * what one of its own members was worked from. `goal` is what was asked for: a figure that is asked is not held against its
 * own default. With `about`, only what is at odds with one of these.
 */
export function conflicts(
  knowledge: Knowledge,
  solved: Facts,
  goal?: string,
  about?: ReadonlySet<string>,
): Contradiction[] {
  const { network, defaults, relations } = knowledge;
  return contradictions(network, solved, defaults, about).filter(({ method, against }) => {
    const isPlan = (id: string | undefined): boolean => (id !== undefined && relations.get(id)?.plan) ?? false;
    // A plan that stands in where the better one is not at hand: the lift that was said, taken for the whole depth.
    const isGuess = (id: string | undefined): boolean => isPlan(id) && relations.get(id!)?.second === true;
    if (isPlan(method.relation.id) || isPlan(solved.get(method.finds)?.by?.relation.id)) return false;
    if ([...restsOn(solved, method.needs)].some((id) => isGuess(solved.get(id)?.by?.relation.id))) return false;
    if (goal !== undefined && against === goal) return false;
    if (method.relation.second && bettered(knowledge, solved, method.finds)) return false;
    return against !== undefined || !goesRound(solved, [method.finds, ...method.needs]);
  });
}

/** True when a quantity is worked out, or could be, by a relation that is no stand-in. */
function bettered({ network }: Knowledge, solved: Facts, id: string): boolean {
  if (solved.get(id)?.by) return true;
  return (network.finding.get(id) ?? [])
    .map((at) => network.methods[at]!)
    .filter(({ relation, finds }) => !relation.second && finds === relation.finds.id)
    .some(({ needs }) => needs.every((need) => isFirm(solved.get(need))) && !restsOn(solved, needs).has(id));
}

const isFirm = (fact: Solved | undefined): boolean => fact !== undefined && !fact.soft;

/** True when one member was worked out from all that the others rest on: then nothing new is said. */
function goesRound(solved: Facts, members: readonly string[]): boolean {
  const all = rootsOf(solved, members);
  return members.some((id) => {
    if (!solved.get(id)?.by) return false;
    const own = rootsOf(solved, [id]);
    return [...all].every((root) => own.has(root));
  });
}

function rootsOf(solved: Facts, ids: readonly string[]): Set<string> {
  return new Set([...restsOn(solved, ids)].filter((id) => !solved.get(id)?.by));
}
