import { type Ends, ends, evaluate } from './expression.ts';
import type { Method } from './relation.ts';

/** A known figure, in base units. A range the asker gave and the band of a default are both `low` to `high`. */
export interface Known {
  readonly id: string;
  readonly value: number;
  readonly low?: number;
  readonly high?: number;
  /** A default: used only where nothing surer leads there. */
  readonly assumed?: boolean;
}

/** A figure with the way it was come by. */
export interface Solved {
  readonly id: string;
  readonly value: number;
  readonly low: number;
  readonly high: number;
  /** The two ends counting only the ranges the asker gave, not the bands of defaults. */
  readonly saidLow: number;
  readonly saidHigh: number;
  /** Defaults this rests on. */
  readonly assumed: readonly string[];
  /** True when it rests on a default that has no band: then it contradicts nobody. */
  readonly soft: boolean;
  /** The relation that found it; absent for a figure that was given or assumed. */
  readonly by?: Method;
}

/** All methods of all relations, with what starts each; built once. */
export interface Network {
  readonly methods: readonly Method[];
  /** Methods that a quantity is needed by. */
  readonly usedBy: ReadonlyMap<string, readonly number[]>;
  readonly finding: ReadonlyMap<string, readonly number[]>;
  /** Quantities that are counted: with a range given, the high end is the figure. */
  readonly counted: ReadonlySet<string>;
}

/** Joins methods to a network. Order of the methods breaks ties, so give them in order of relation id. */
export function network(methods: readonly Method[], counted: Iterable<string> = []): Network {
  const usedBy = new Map<string, number[]>();
  const finding = new Map<string, number[]>();
  const put = (map: Map<string, number[]>, id: string, at: number) => {
    const list = map.get(id);
    if (list) list.push(at);
    else map.set(id, [at]);
  };
  methods.forEach((method, at) => {
    for (const id of method.needs) put(usedBy, id, at);
    put(finding, method.finds, at);
  });
  return { methods, usedBy, finding, counted: new Set(counted) };
}

/** What a fact costs: figures to ask for, then defaults to assume, then steps. Compared in that order. */
const ask = 1e8;
const assume = 1e4;
const step = 1;
const secondChoice = 50;

interface Reached {
  readonly id: string;
  readonly cost: number;
  readonly method: number;
}

/**
 * Spreads outward from what is known, cheapest first, and calls `settle` once for each quantity reached; a method whose
 * `settle` answers false has led nowhere (over the end of a table) and another may still reach the quantity.
 */
function spread(net: Network, sources: readonly Reached[], settle: (reached: Reached) => boolean): void {
  const waiting = Uint8Array.from(net.methods, (method) => method.needs.length);
  const spent = new Float64Array(net.methods.length);
  const done = new Set<string>();
  const queue: Reached[] = [];
  for (const source of sources) push(queue, source);
  for (let next = pop(queue); next; next = pop(queue)) {
    if (done.has(next.id) || !settle(next)) continue;
    done.add(next.id);
    for (const at of net.usedBy.get(next.id) ?? []) {
      const method = net.methods[at]!;
      spent[at]! += next.cost;
      waiting[at]!--;
      if (waiting[at] || done.has(method.finds)) continue;
      push(queue, { id: method.finds, cost: spent[at]! + step + (method.relation.second ? secondChoice : 0), method: at });
    }
  }
}

/** Everything that follows from what is known. */
export function solve(net: Network, known: readonly Known[]): Map<string, Solved> {
  const solved = new Map<string, Solved>();
  const given = new Map<string, Known>();
  const sources: Reached[] = [];
  for (const fact of known) {
    const earlier = given.get(fact.id);
    if (earlier && !earlier.assumed) continue;
    given.set(fact.id, fact);
  }
  for (const fact of given.values()) sources.push({ id: fact.id, cost: fact.assumed ? assume : 0, method: -1 });
  spread(net, sources, ({ id, method }) => {
    const fact = method < 0 ? fromKnown(given.get(id)!) : work(net.methods[method]!, solved, net.counted.has(id));
    if (!fact) return false;
    solved.set(id, fact);
    return true;
  });
  return solved;
}

function fromKnown({ id, value, low = value, high = value, assumed = false }: Known): Solved {
  return {
    id,
    value,
    low,
    high,
    saidLow: assumed ? value : low,
    saidHigh: assumed ? value : high,
    assumed: assumed ? [id] : [],
    soft: assumed && low === high,
  };
}

/** Works one method from solved facts. Undefined when it has no answer. */
function work(method: Method, solved: ReadonlyMap<string, Solved>, counted: boolean): Solved | undefined {
  const needs = method.needs.map((id) => solved.get(id)!);
  const value = evaluate(method.by, (id) => solved.get(id)!.value);
  if (!Number.isFinite(value)) return undefined;
  const ranged = needs.some((fact) => fact.low !== fact.high);
  const said = needs.some((fact) => fact.saidLow !== fact.saidHigh);
  const [low, high] = ranged ? endsOf(method, (id) => [solved.get(id)!.low, solved.get(id)!.high], value) : [value, value];
  const [saidLow, saidHigh] = said ? endsOf(method, (id) => [solved.get(id)!.saidLow, solved.get(id)!.saidHigh], value) : [value, value];
  return {
    id: method.finds,
    value: counted ? saidHigh : value,
    low,
    high,
    saidLow: counted ? saidHigh : saidLow,
    saidHigh,
    assumed: [...new Set(needs.flatMap((fact) => fact.assumed))],
    soft: needs.some((fact) => fact.soft),
    by: method,
  };
}

function endsOf(method: Method, fact: (id: string) => Ends, value: number): Ends {
  const [low, high] = ends(method.by, fact);
  return Number.isFinite(low) && Number.isFinite(high) ? [low, high] : [value, value];
}

/**
 * The smallest set of figures that would settle `goal`, given what is known; the cheaper ones by `ease` (1 is easy).
 * Undefined when nothing that can be asked leads there.
 */
export function missing(net: Network, known: readonly Known[], goal: string, ease: ReadonlyMap<string, number>): string[] | undefined {
  const way = new Map<string, Reached>();
  const sources: Reached[] = known.map(({ id, assumed }) => ({ id, cost: assumed ? assume : 0, method: -1 }));
  const surely = new Set(known.filter((fact) => !fact.assumed).map((fact) => fact.id));
  for (const [id, weight] of ease) {
    if (id !== goal && !surely.has(id)) sources.push({ id, cost: ask * weight, method: -1 });
  }
  spread(net, sources, (reached) => {
    way.set(reached.id, reached);
    return true;
  });
  if (!way.has(goal)) return undefined;
  const wanted = new Set<string>();
  const walk = (id: string): void => {
    const { method, cost } = way.get(id)!;
    if (method >= 0) for (const need of net.methods[method]!.needs) walk(need);
    else if (cost >= ask) wanted.add(id);
  };
  walk(goal);
  return [...wanted];
}

/** The steps that led to a quantity, each after those it rests on. */
export function derivation(solved: ReadonlyMap<string, Solved>, goal: string, into: Solved[] = []): Solved[] {
  const fact = solved.get(goal);
  if (!fact || into.includes(fact)) return into;
  if (fact.by) {
    for (const need of fact.by.needs) derivation(solved, need, into);
    if (!into.includes(fact)) into.push(fact);
  }
  return into;
}

/** What a quantity rests on and was not worked out: given figures and defaults. */
export function restsOn(solved: ReadonlyMap<string, Solved>, goals: readonly string[]): Set<string> {
  const found = new Set<string>();
  const walk = (id: string): void => {
    const fact = solved.get(id);
    if (!fact || found.has(id)) return;
    found.add(id);
    for (const need of fact.by?.needs ?? []) walk(need);
  };
  for (const goal of goals) walk(goal);
  return found;
}

/** Two figures for one quantity that cannot both be so. */
export interface Contradiction {
  readonly method: Method;
  /** What the relation makes of the other facts. */
  readonly implied: Ends;
  readonly stated: Ends;
}

/** Rounding that people do in their heads, before two figures count as being at odds. */
const tolerance = 0.02;

/**
 * Facts at odds: each relation whose every member is known and that did not itself find one of them, where what it
 * yields lies clear of what was said. Facts that rest on a bandless default contradict nobody.
 */
export function contradictions(net: Network, solved: ReadonlyMap<string, Solved>): Contradiction[] {
  const found: Contradiction[] = [];
  for (const method of net.methods) {
    if (method.finds !== method.relation.finds.id) continue;
    const whole = solved.get(method.finds);
    if (!whole || whole.soft || whole.by?.relation === method.relation) continue;
    const facts = method.needs.map((id) => solved.get(id));
    if (facts.some((fact) => !fact || fact.soft || fact.by?.relation === method.relation)) continue;
    const implied = ends(method.by, (id) => [solved.get(id)!.low, solved.get(id)!.high]);
    const room = tolerance * Math.max(Math.abs(whole.low), Math.abs(whole.high));
    if (implied[0] > whole.high + room || implied[1] < whole.low - room) {
      found.push({ method, implied, stated: [whole.low, whole.high] });
    }
  }
  return found;
}

/** A binary heap by cost; first in wins a tie, which keeps the answer the same every time. */
interface Queued extends Reached {
  order?: number;
}
let serial = 0;

function before(a: Queued, b: Queued): boolean {
  return a.cost < b.cost || (a.cost === b.cost && a.order! < b.order!);
}

function push(heap: Queued[], item: Queued): void {
  item.order = serial++;
  let at = heap.push(item) - 1;
  while (at > 0) {
    const parent = (at - 1) >> 1;
    if (!before(item, heap[parent]!)) break;
    heap[at] = heap[parent]!;
    at = parent;
  }
  heap[at] = item;
}

function pop(heap: Queued[]): Queued | undefined {
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
