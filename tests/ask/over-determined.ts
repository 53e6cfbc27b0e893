import { evaluate, factsOf } from '../../src/calc/expression.ts';
import { fromBase, toBase } from '../../src/calc/quantity.ts';
import type { Unit } from '../../src/calc/units.ts';
import { knowledge } from '../../src/rules/knowledge.ts';
import type { Facts, RelationRecord } from '../../src/rules/shapes.ts';

type Figure = readonly [number, Unit];

/** Facts of the first example of a relation with what it finds, rounded as people write figures. */
export function factsIn({ by, finds, examples: [{ given, finds: found }], when = [] }: RelationRecord): Facts {
  const value = evaluate(by, (id) => toBase(...(given[id] as Figure)));
  const settled = Object.fromEntries(when.map(({ choice, is }) => [choice.id, is[0]!]));
  const all: Facts = { ...settled, ...given, [finds.id]: [fromBase(value, found[1]), found[1]] };
  return Object.fromEntries(
    Object.entries(all).map(([id, fact]) => [
      id,
      typeof fact === 'string' ? fact : [Number(fact[0].toPrecision(6)), fact[1]],
    ]),
  );
}

/** More and less of a figure; a count in whole steps. Those that its quantity could not be are left out. */
function others(id: string, [number, unit]: Figure): Figure[] {
  const { dimension, plausible } = knowledge.quantities.get(id)!;
  const isWhole = dimension === 'count' && Number.isInteger(number);
  const moved = isWhole
    ? [number + 2, number - 2, number + 1, number * 2, Math.ceil(number / 3)]
    : [number * 1.3, number * 0.7, number * 1.1, number * 0.9, number * 2, number * 0.4];
  const isLikely = (each: number): boolean =>
    each > 0 &&
    (!plausible ||
      (toBase(each, unit) <= toBase(plausible.max.number, plausible.max.unit) &&
        toBase(each, unit) >= toBase(plausible.min.number, plausible.min.unit)));
  return moved
    .map((each) => Number(each.toPrecision(4)))
    .filter(isLikely)
    .map((each) => [each, unit]);
}

/** Clear of what is taken for rounding. */
const apart = 0.05;

/** One fact of a consistent set said otherwise, so that the relation no longer holds; undefined where no likely figure does that. */
export function disturbed(record: RelationRecord, member: string): Facts | undefined {
  const facts = factsIn(record);
  for (const figure of others(member, facts[member] as Figure)) {
    const all: Facts = { ...facts, [member]: figure };
    const implied = evaluate(record.by, (id) => toBase(...(all[id] as Figure)));
    const stated = toBase(...(all[record.finds.id] as Figure));
    if (Math.abs(implied - stated) > apart * Math.max(Math.abs(stated), Math.abs(implied))) return all;
  }
  return undefined;
}

/** The figures that a relation joins, what it finds first. */
export const membersOf = ({ by, finds }: RelationRecord): string[] =>
  [finds.id, ...factsOf(by)].filter((id) => knowledge.quantities.has(id));
