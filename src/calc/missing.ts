import type { Known } from './fact.ts';
import { asked, atHand, cost, type Network, type Reached, waysTo } from './spread.ts';

/**
 * The figures that would settle `goal` with the least trouble, given what is known, `ease` being the trouble of each
 * (1 is easy), easiest first; none of them can be spared. Undefined when nothing that can be asked leads there.
 *
 * On the way through the network a figure that two branches need is paid for twice. So each figure found is also tried
 * as one that is asked anyway, and what then follows from the others is dropped. Where several figures are shared in a
 * tangle a cheaper set can still be missed.
 */
export function missing(
  net: Network,
  known: readonly Known[],
  goal: string,
  ease: ReadonlyMap<string, number>,
): string[] | undefined {
  if (known.some(({ id }) => id === goal)) return [];
  const said = new Set(known.filter(({ assumed }) => !assumed).map(({ id }) => id));
  const have = known.flatMap(({ id, assumed }) => source(net, id, assumed ? cost.assuming : 0, atHand));
  const toAsk = [...ease].flatMap(([id, trouble]) =>
    id === goal || said.has(id) ? [] : source(net, id, cost.asking * trouble, asked),
  );
  const troubleOf = (ids: readonly string[]): number => ids.reduce((sum, id) => sum + ease.get(id)!, 0);
  const first = askedFor(net, [...have, ...toAsk], goal);
  if (!first) return undefined;
  const cheapest = first.reduce((best, id) => {
    const set = [id, ...askedFor(net, [...source(net, id, 0, atHand), ...have, ...toAsk], goal)!];
    return troubleOf(set) < troubleOf(best) ? set : best;
  }, first);
  const easiestFirst = cheapest.sort((a, b) => ease.get(a)! - ease.get(b)!);
  return easiestFirst.reduceRight((kept, id) => {
    const rest = kept.filter((other) => other !== id);
    const asking = rest.flatMap((other) => source(net, other, 0, atHand));
    return askedFor(net, [...have, ...asking], goal) ? rest : kept;
  }, easiestFirst);
}

function source(net: Network, id: string, price: number, method: number): Reached[] {
  const place = net.places.get(id);
  return place === undefined ? [] : [{ place, cost: price, method }];
}

/** What the cheapest way to `goal` asks for. Undefined when none leads there. */
function askedFor(net: Network, sources: readonly Reached[], goal: string): string[] | undefined {
  const place = net.places.get(goal);
  const ways = place === undefined ? undefined : waysTo(net, sources, place);
  if (place === undefined || !ways) return undefined;
  const seen = new Set<number>();
  const walk = (at: number): string[] => {
    if (seen.has(at)) return [];
    seen.add(at);
    const method = ways[at]!;
    if (method === asked) return [net.ids[at]!];
    return method === atHand ? [] : net.needs[method]!.flatMap(walk);
  };
  return walk(place);
}
