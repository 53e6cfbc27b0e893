import type { Known, Solution, Solved } from './fact.ts';
import { atHand, cost, type Network, nowhere, Queue, type Reached } from './spread.ts';
import { fromKnown, work } from './work.ts';

/** Facts with all that follows from them, and how each was come by: more facts can be laid over it. */
export class Ground implements Solution {
  readonly net: Network;
  /** What is at hand, by its id. */
  readonly known: (id: string) => Known | undefined;
  /** What each quantity came to, by its place in the network; what that cost; and the method that found it, or `atHand` or `nowhere`. */
  readonly facts: readonly (Solved | undefined)[];
  readonly costs: Float64Array;
  readonly ways: Int32Array;
  /** Facts that no relation knows. */
  readonly strangers: ReadonlyMap<string, Solved>;

  constructor(
    { net, facts, costs, ways }: Pick<Ground, 'net' | 'facts' | 'costs' | 'ways'>,
    known: Ground['known'],
    strangers: Ground['strangers'],
  ) {
    this.net = net;
    this.known = known;
    this.facts = facts;
    this.costs = costs;
    this.ways = ways;
    this.strangers = strangers;
  }

  get(id: string): Solved | undefined {
    const place = this.net.places.get(id);
    return place === undefined ? this.strangers.get(id) : this.facts[place];
  }

  has(id: string): boolean {
    return this.get(id) !== undefined;
  }

  *[Symbol.iterator](): Generator<readonly [string, Solved]> {
    for (const fact of this.facts) if (fact) yield [fact.id, fact];
    // In an order of their own, whichever of them was told first.
    yield* [...this.strangers].sort(([a], [b]) => (a < b ? -1 : 1));
  }
}

/** The ground on which nothing is known. */
export function bareGround(net: Network): Ground {
  const costs = new Float64Array(net.ids.length).fill(Number.POSITIVE_INFINITY);
  const ways = new Int32Array(net.ids.length).fill(nowhere);
  return new Ground({ net, facts: new Array(net.ids.length).fill(undefined), costs, ways }, () => undefined, new Map());
}

/** What is laid over a ground. */
export interface Layer {
  readonly facts: readonly Known[];
  /** Ids of what is no more at hand. */
  readonly without?: Iterable<string>;
  /** Called when a way had no answer for these figures, so that another one had to be found. */
  readonly deadEnd?: (() => void) | undefined;
}

/**
 * Lays facts over a ground: what comes out is what all of them together come to from nothing, while only what the new ones
 * touch is worked out. What is said goes before what is assumed, then the fewest steps. Of a fact given twice the first one
 * said stands, else the last one assumed.
 */
export function overlaid(ground: Ground, { facts, without = [], deadEnd }: Layer): Ground {
  const { net } = ground;
  const own = new Map<string, Known | undefined>();
  const known = (id: string): Known | undefined => (own.has(id) ? own.get(id) : ground.known(id));
  for (const id of without) own.set(id, undefined);
  for (const fact of facts) {
    const earlier = known(fact.id);
    if (!earlier || earlier.assumed) own.set(fact.id, fact);
  }
  const strangers = new Map(ground.strangers);
  const spreading = new Spreading(ground, known, deadEnd);
  for (const [id, fact] of own) {
    const place = net.places.get(id);
    if (place !== undefined) spreading.put(place, fact);
    else if (fact) strangers.set(id, fromKnown(fact, net.counted.has(id)));
    else strangers.delete(id);
  }
  spreading.run();
  return new Ground(spreading, known, strangers);
}

/**
 * The spreading of facts over a ground. It goes outward, cheapest first, from the facts and from what has lost its way; a
 * quantity is settled anew where it is reached more cheaply than before, or where something it was found from has changed.
 */
class Spreading {
  readonly net: Network;
  readonly facts: (Solved | undefined)[];
  readonly costs: Float64Array;
  readonly ways: Int32Array;
  private readonly known: (id: string) => Known | undefined;
  private readonly deadEnd: (() => void) | undefined;
  private readonly settled: Uint8Array;
  /** Methods that had no answer. */
  private readonly dead = new Set<number>();
  private readonly queue = new Queue();

  constructor(
    { net, facts, costs, ways }: Ground,
    known: (id: string) => Known | undefined,
    deadEnd: (() => void) | undefined,
  ) {
    this.net = net;
    this.facts = facts.slice();
    this.costs = costs.slice();
    this.ways = ways.slice();
    this.known = known;
    this.deadEnd = deadEnd;
    this.settled = new Uint8Array(facts.length);
  }
  /** Puts a fact at hand in the place of what was, or of nothing; undefined takes it away. */
  put(place: number, fact: Known | undefined): void {
    if (this.ways[place] === atHand && (!fact || fact.assumed)) this.forget(place);
    else if (fact) this.offer(place, priceOf(fact), atHand);
  }

  /** Settles what can be reached, until nothing comes cheaper. */
  run(): void {
    for (let next = this.queue.take(); next; next = this.queue.take()) {
      const { place, method, cost } = next;
      // A way whose parts have become cheaper since is in line once more.
      if (this.settled[place] || (method !== atHand && cost !== this.priceOf(method))) continue;
      const fact = this.come(next);
      if (fact) this.settle(next, fact);
      else this.miss(next);
    }
  }

  private come({ place, method }: Reached): Solved | undefined {
    const { net, known } = this;
    const id = net.ids[place]!;
    const counted = net.counted.has(id);
    return method === atHand ? fromKnown(known(id)!, counted) : work(net.methods[method]!, this.factOf, counted);
  }

  private readonly factOf = (id: string): Solved | undefined => this.facts[this.net.places.get(id)!];

  private settle({ place, method, cost }: Reached, fact: Solved): void {
    this.facts[place] = fact;
    this.costs[place] = cost;
    this.ways[place] = method;
    this.settled[place] = 1;
    for (const at of this.net.usedBy[place]!) this.offerMethod(at);
  }

  private miss({ place, method }: Reached): void {
    this.dead.add(method);
    this.deadEnd?.();
    if (this.ways[place] === method) this.forget(place);
  }

  /** Takes a quantity away with all that was found from it, and puts in line what else leads to them. */
  private forget(place: number): void {
    for (const lost of this.lose(place)) {
      const fact = this.known(this.net.ids[lost]!);
      if (fact) this.offer(lost, priceOf(fact), atHand);
      for (const at of this.net.finding.get(this.net.ids[lost]!) ?? []) this.offerMethod(at);
    }
  }

  private lose(place: number, lost: number[] = []): number[] {
    const { net, facts, costs, ways } = this;
    facts[place] = undefined;
    costs[place] = Number.POSITIVE_INFINITY;
    ways[place] = nowhere;
    lost.push(place);
    for (const at of net.usedBy[place]!) if (ways[net.finds[at]!] === at) this.lose(net.finds[at]!, lost);
    return lost;
  }

  private offerMethod(method: number): void {
    const price = this.priceOf(method);
    if (price < Number.POSITIVE_INFINITY && !this.dead.has(method)) this.offer(this.net.finds[method]!, price, method);
  }

  /** Puts a way in line, where it is better than the one there is, or is that very one and may now come to something else. */
  private offer(place: number, cost: number, method: number): void {
    if (this.settled[place]) return;
    const now = this.costs[place]!;
    if (cost < now || (cost === now && method <= this.ways[place]!)) this.queue.put({ place, cost, method });
  }

  /** What the needs of a method cost together, and a step; endless while one of them is not there. */
  private priceOf(method: number): number {
    let price = this.net.steps[method]!;
    for (const place of this.net.needs[method]!) price += this.costs[place]!;
    return price;
  }
}

function priceOf({ assumed, last }: Known): number {
  if (!assumed) return 0;
  return last ? cost.lastResort : cost.assuming;
}
