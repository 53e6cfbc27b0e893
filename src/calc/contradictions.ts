import { type Ends, ends } from './ends.ts';
import type { Known, Solution, Solved } from './fact.ts';
import type { Method } from './relation.ts';
import type { Network } from './spread.ts';

/** Two figures for one quantity that cannot both be so. */
export interface Contradiction {
  /** The relation as it is written. */
  readonly method: Method;
  /** What the relation makes of the other facts. */
  readonly implied: Ends;
  readonly stated: Ends;
  /** The default whose band was held against the facts, because they alone would set that quantity. */
  readonly against?: string;
}

/** Rounding that people do in their heads, before two figures count as being at odds. */
const tolerance = 0.02;

/**
 * Facts at odds: each relation whose every member is known and that did not itself find one of them, where what it
 * yields lies clear of what was said. Facts that rest on a bandless default contradict nobody.
 *
 * With `defaults`, a member that the relation found by being turned round gives way to the band of its default: 20 tons
 * over 2,400 sq ft an inch deep would be mix of 150 lb/sq yd/in, and mix weighs 105 to 120. Leave such a contradiction
 * alone when it is `against` the very quantity that was asked for. With `about`, only relations that find one of these.
 */
export function contradictions(
  net: Network,
  solved: Solution,
  defaults: readonly Known[] = [],
  about?: ReadonlySet<string>,
): Contradiction[] {
  const found: Contradiction[] = [];
  for (const method of about ? methodsFor(net, about) : net.methods) {
    if (method.finds !== method.relation.finds.id) continue;
    const whole = solved.get(method.finds);
    if (!whole || whole.soft || whole.by?.relation === method.relation) continue;
    const turnedRound = (id: string): boolean => solved.get(id)?.by?.relation === method.relation;
    const range = (id: string): Ends | undefined =>
      turnedRound(id) ? bandOf(defaults, id) : firmRange(solved.get(id));
    if (!method.needs.every(range)) continue;
    const implied = ends(method.by, (id) => range(id)!);
    const room = tolerance * Math.max(Math.abs(whole.low), Math.abs(whole.high));
    if (implied[0] <= whole.high + room && implied[1] >= whole.low - room) continue;
    const against = method.needs.find(turnedRound);
    found.push({ method, implied, stated: [whole.low, whole.high], ...(against ? { against } : {}) });
  }
  return found;
}

const firmRange = (fact: Solved | undefined): Ends | undefined =>
  fact && !fact.soft ? [fact.low, fact.high] : undefined;

/** Every way to find one of some quantities, in the order of all methods. */
const methodsFor = ({ finding, methods }: Network, about: ReadonlySet<string>): Method[] =>
  [...about]
    .flatMap((id) => finding.get(id) ?? [])
    .sort((a, b) => a - b)
    .map((at) => methods[at]!);

/** The band of a default; of a quantity with several the last one that has a band. */
function bandOf(defaults: readonly Known[], wanted: string): Ends | undefined {
  const isBand = ({ id, value, low = value, high = value }: Known): boolean => id === wanted && low !== high;
  const found = defaults.findLast(isBand);
  return found && [found.low ?? found.value, found.high ?? found.value];
}
