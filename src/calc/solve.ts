import { type Ends, ends } from './ends.ts';
import { evaluate } from './expression.ts';
import type { Known, Solved } from './fact.ts';
import type { Method } from './relation.ts';
import { atHand, cost, type Network, type Reached, spread } from './spread.ts';

export { type Contradiction, contradictions } from './contradictions.ts';
export { derivation, restsOn } from './derivation.ts';
export type { Known, Solved } from './fact.ts';
export { missing } from './missing.ts';
export { type Network, network } from './spread.ts';

/**
 * Everything that follows from what is known: what is said before what is assumed, then the fewest steps. The order of
 * the facts does not matter; of a fact given twice the first one said stands, else the last one assumed. `deadEnd` is
 * called when a way had no answer for these figures, so that another one had to be found.
 */
export function solve(net: Network, known: readonly Known[], deadEnd?: () => void): Map<string, Solved> {
  const solved = new Map<string, Solved>();
  const given = new Map<string, Known>();
  for (const fact of known) {
    const earlier = given.get(fact.id);
    if (!earlier || earlier.assumed) given.set(fact.id, fact);
  }
  const sources: Reached[] = [];
  const strangers: string[] = [];
  for (const fact of given.values()) {
    const place = net.places.get(fact.id);
    if (place === undefined) strangers.push(fact.id);
    else sources.push({ place, cost: priceOf(fact), method: atHand });
  }
  spread(net, sources, ({ place, method }) => {
    const id = net.ids[place]!;
    const counted = net.counted.has(id);
    const fact = method === atHand ? fromKnown(given.get(id)!, counted) : work(net.methods[method]!, solved, counted);
    if (fact) solved.set(id, fact);
    else deadEnd?.();
    return fact !== undefined;
  });
  // Facts that no relation knows, in an order of their own.
  for (const id of strangers.sort()) solved.set(id, fromKnown(given.get(id)!, net.counted.has(id)));
  return solved;
}

/**
 * The steps of an earlier solution taken again with other figures of the same facts, over the same assumed ones. Undefined
 * when one of them has no answer this time: then the facts must be solved afresh.
 */
export function reworked(
  net: Network,
  facts: readonly Known[],
  { assumed, steps }: { readonly assumed: ReadonlyMap<string, Solved>; readonly steps: readonly Solved[] },
): Map<string, Solved> | undefined {
  const solved = new Map(assumed);
  // Backward, so that of a fact given twice the first one stands.
  for (let at = facts.length - 1; at >= 0; at--) {
    const fact = facts[at]!;
    solved.set(fact.id, fromKnown(fact, net.counted.has(fact.id)));
  }
  for (const { id, by } of steps) {
    const fact = work(by!, solved, net.counted.has(id));
    if (!fact) return undefined;
    solved.set(id, fact);
  }
  return solved;
}

function priceOf({ assumed, last }: Known): number {
  if (!assumed) return 0;
  return last ? cost.lastResort : cost.assuming;
}

function fromKnown({ id, value, low = value, high = value, assumed = false }: Known, counted: boolean): Solved {
  if (assumed) return { id, value, low, high, saidLow: value, saidHigh: value, assumed: [id], soft: low === high };
  const figure = counted ? high : value;
  return { id, value: figure, low, high, saidLow: counted ? high : low, saidHigh: high, assumed: none, soft: false };
}

const none: readonly string[] = [];

/** Works one method from solved facts. Undefined when it has no answer. */
function work(method: Method, solved: ReadonlyMap<string, Solved>, counted: boolean): Solved | undefined {
  const value = evaluate(method.by, (id) => solved.get(id)!.value);
  if (!Number.isFinite(value)) return undefined;
  let ranged = false;
  let said = false;
  let soft = false;
  let assumed = none;
  for (const id of method.needs) {
    const fact = solved.get(id)!;
    ranged ||= fact.low !== fact.high;
    said ||= fact.saidLow !== fact.saidHigh;
    soft ||= fact.soft;
    assumed = union(assumed, fact.assumed);
  }
  let [low, high, saidLow, saidHigh] = [value, value, value, value];
  if (ranged) [low, high] = endsOf(method, (id) => rangeOf(solved.get(id)!), value);
  if (said) [saidLow, saidHigh] = endsOf(method, (id) => saidRangeOf(solved.get(id)!), value);
  return {
    id: method.finds,
    value: counted ? saidHigh : value,
    low,
    high,
    saidLow: counted ? saidHigh : saidLow,
    saidHigh,
    assumed,
    soft,
    by: method,
  };
}

const rangeOf = ({ low, high }: Solved): Ends => [low, high];
const saidRangeOf = ({ saidLow, saidHigh }: Solved): Ends => [saidLow, saidHigh];

function endsOf(method: Method, fact: (id: string) => Ends, otherwise: number): Ends {
  const found = ends(method.by, fact);
  return Number.isFinite(found[0]) && Number.isFinite(found[1]) ? found : [otherwise, otherwise];
}

/** Both lists, each name once, in order. */
function union(a: readonly string[], b: readonly string[]): readonly string[] {
  if (a.length === 0 || b.length === 0) return a.length ? a : b;
  const fresh = b.filter((name) => !a.includes(name));
  return fresh.length ? [...a, ...fresh] : a;
}
