import type { Method } from './relation.ts';

/** All methods of all relations, with what starts each; built once. */
export interface Network {
  readonly methods: readonly Method[];
  /** Methods that find a quantity. */
  readonly finding: ReadonlyMap<string, readonly number[]>;
  /** Quantities that are counted: with a range given, the high end is the figure. */
  readonly counted: ReadonlySet<string>;
  /** Place of each quantity in the lists below: the search goes by number, not by name. */
  readonly places: ReadonlyMap<string, number>;
  readonly ids: readonly string[];
  /** Methods that the quantity at each place is needed by. */
  readonly usedBy: readonly (readonly number[])[];
  /** Place of the quantity that each method finds, and of those it needs. */
  readonly finds: readonly number[];
  readonly needs: readonly (readonly number[])[];
  /** How many each method needs. */
  readonly counts: Uint8Array;
  /** What the step of each method costs, its needs aside; one that needs nothing is never taken. */
  readonly steps: readonly number[];
}

/** Joins methods to a network. Order of the methods breaks ties, so give them in order of relation id. */
export function network(methods: readonly Method[], counted: Iterable<string> = []): Network {
  const places = new Map<string, number>();
  const ids: string[] = [];
  const usedBy: number[][] = [];
  const finding = new Map<string, number[]>();
  const placeOf = (id: string): number => {
    const place = places.get(id);
    if (place !== undefined) return place;
    places.set(id, ids.length);
    usedBy.push([]);
    return ids.push(id) - 1;
  };
  const needs: number[][] = [];
  const finds = methods.map((method, at) => {
    needs.push(method.needs.map(placeOf));
    for (const place of needs[at]!) usedBy[place]!.push(at);
    const others = finding.get(method.finds);
    if (others) others.push(at);
    else finding.set(method.finds, [at]);
    return placeOf(method.finds);
  });
  const steps = methods.map(({ needs, relation }) => {
    if (needs.length === 0) return Number.POSITIVE_INFINITY;
    const choices = relation.third ? 2 : relation.second ? 1 : 0;
    return cost.step + choices * cost.secondChoice;
  });
  const counts = Uint8Array.from(needs, ({ length }) => length);
  return { methods, finding, counted: new Set(counted), places, ids, usedBy, finds, needs, counts, steps };
}

/** A way a quantity can be had. */
export interface Reached {
  /** Place of the quantity in the network. */
  readonly place: number;
  readonly cost: number;
  /** Which method finds it, or `atHand` or `asked`. */
  readonly method: number;
}

/** In place of a method: what is known or assumed from the start. */
export const atHand = -1;
/** In place of a method: what somebody would have to be asked. */
export const asked = -2;
/** In place of a method: where nothing leads. */
export const nowhere = -3;

/** What a fact costs: figures to ask for, then defaults to assume, then steps. Compared in that order. */
export const cost = { asking: 1e8, lastResort: 1e6, assuming: 1e4, secondChoice: 50, step: 1 };

/**
 * Spreads outward from what is there, cheapest first, as far as the place of a goal: the way that each quantity is reached
 * by, by its place. Undefined when nothing leads to the goal. A method costs what its needs cost together, a step, and more
 * when it is of second choice.
 */
export function waysTo(net: Network, sources: readonly Reached[], goal: number): Int32Array | undefined {
  const waiting = net.counts.slice();
  const spent = new Float64Array(net.methods.length);
  const ways = new Int32Array(net.ids.length).fill(nowhere);
  const queue = new Queue(sources);
  for (let next = queue.take(); next; next = queue.take()) {
    if (ways[next.place] !== nowhere) continue;
    ways[next.place] = next.method;
    if (next.place === goal) return ways;
    for (const at of net.usedBy[next.place]!) {
      spent[at]! += next.cost;
      if (--waiting[at]! === 0) queue.put({ place: net.finds[at]!, cost: spent[at]! + net.steps[at]!, method: at });
    }
  }
  return undefined;
}

/** Cheapest first; then the earlier method, then the earlier quantity: never the order in which facts were given. */
function before(a: Reached, b: Reached): boolean {
  return a.cost < b.cost || (a.cost === b.cost && (a.method - b.method || a.place - b.place) < 0);
}

/** A binary heap. */
export class Queue {
  private readonly heap: Reached[] = [];

  constructor(items: readonly Reached[] = []) {
    for (const item of items) this.put(item);
  }

  put(item: Reached): void {
    const { heap } = this;
    let at = heap.push(item) - 1;
    while (at > 0) {
      const parent = (at - 1) >> 1;
      if (!before(item, heap[parent]!)) break;
      heap[at] = heap[parent]!;
      at = parent;
    }
    heap[at] = item;
  }

  take(): Reached | undefined {
    const { heap } = this;
    const top = heap[0];
    const last = heap.pop();
    if (!top || !last || heap.length === 0) return top;
    let at = 0;
    for (;;) {
      let child = 2 * at + 1;
      if (child >= heap.length) break;
      if (child + 1 < heap.length && before(heap[child + 1]!, heap[child]!)) child++;
      if (!before(heap[child]!, last)) break;
      heap[at] = heap[child]!;
      at = child;
    }
    heap[at] = last;
    return top;
  }
}
