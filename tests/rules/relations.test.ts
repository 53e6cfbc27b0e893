import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { evaluate, factsOf } from '../../src/calc/expression.ts';
import { isolate } from '../../src/calc/isolate.ts';
import { fromBase, toBase } from '../../src/calc/quantity.ts';
import { methodsOf } from '../../src/calc/relation.ts';
import { contradictions, type Known, solve } from '../../src/calc/solve.ts';
import { type Unit, unitRow, units } from '../../src/calc/units.ts';
import { knowledge } from '../../src/rules/knowledge.ts';
import type { Facts, RelationExample, RelationRecord } from '../../src/rules/shapes.ts';
import { startOf } from '../../src/rules/start.ts';
import { alone, knownOf } from './facts.ts';
import { oneWay } from './one-way.ts';

const relations = [...knowledge.relations.values()];
const named = relations.map((record) => [record.id, record] as const);
const cases = relations.flatMap((record) =>
  record.examples.map((example, i) => [`${record.id}, example ${i + 1}`, record, example] as const),
);

const work = (record: RelationRecord, facts: readonly Known[]) => {
  const only = alone(record);
  return solve(only.network, startOf(only, facts));
};
const wanted = ({ finds }: RelationExample): number => toBase(...finds);
const nearly = (a: number, b: number, within = 1e-9): boolean =>
  Math.abs(a - b) <= within * Math.max(Math.abs(a), Math.abs(b), 1e-12);

describe('every relation', () => {
  test.each(named)('%s agrees in dimension', (_, record) => {
    expect(() => methodsOf(record)).not.toThrow();
  });

  test.each(cases)('%s gives every fact it needs, and says where it comes from', (_, record, { given, source }) => {
    expect(factsOf(record.by).filter((id) => !(id in given))).toEqual([]);
    expect(source.trim()).not.toBe('');
  });

  test.each(cases)('%s comes out', (_, record, example) => {
    const fact = work(record, knownOf(example.given)).get(record.finds.id);
    expect(fact?.by?.relation.id).toBe(record.id);
    expect(
      nearly(fact!.value, wanted(example), example.within),
      `${fromBase(fact!.value, example.finds[1])} ${example.finds[1]}`,
    ).toBe(true);
  });
});

describe('each member in turn is the unknown', () => {
  const kept = (record: RelationRecord, id: string): boolean =>
    record.bothWays === false || (record.keeps?.some((quantity) => quantity.id === id) ?? false);
  const whole = (record: RelationRecord) => ({ op: 'fact', ...record.finds }) as const;

  test('but for those that no step can undo, which are these', () => {
    const stuck = relations.flatMap((record) =>
      factsOf(record.by)
        .filter((id) => !kept(record, id) && !isolate(record.by, id, whole(record)))
        .map((id) => `${record.id}: ${id}`),
    );
    expect(stuck.sort()).toEqual([...oneWay].sort());
  });

  const turns = cases.flatMap(([name, record, example]) =>
    factsOf(record.by)
      .filter((id) => !kept(record, id) && isolate(record.by, id, whole(record)))
      .map((id) => [`${name}: ${id}`, record, example, id] as const),
  );
  test.each(turns)('%s', (_, record, example, unknown) => {
    const known = knownOf(example.given);
    const exact = evaluate(record.by, (id) => known.find((fact) => fact.id === id)!.value);
    const rest = known.filter(({ id }) => id !== unknown);
    const back = work(record, [...rest, { id: record.finds.id, value: exact }]).get(unknown);
    expect(back?.value).toBeDefined();
    expect(nearly(back!.value, known.find(({ id }) => id === unknown)!.value, 1e-6)).toBe(true);
  });
});

test.each(cases)('%s is the same in any units', (_, record, example) => {
  const figures = Object.entries(example.given).filter(([, fact]) => typeof fact !== 'string') as [
    string,
    readonly [number, Unit],
  ][];
  const others = (unit: Unit): Unit[] =>
    (Object.keys(units) as Unit[]).filter((other) => unitRow(other).dimension === unitRow(unit).dimension);
  const first = work(record, knownOf(example.given)).get(record.finds.id)!.value;
  fc.assert(
    fc.property(fc.tuple(...figures.map(([, [, unit]]) => fc.constantFrom(...others(unit)))), (chosen) => {
      const given: Facts = {
        ...example.given,
        ...Object.fromEntries(
          figures.map(([id, [number, unit]], i) => [id, [fromBase(toBase(number, unit), chosen[i]!), chosen[i]!]]),
        ),
      };
      const fact = work(record, knownOf(given)).get(record.finds.id);
      expect(nearly(fact!.value, first)).toBe(true);
    }),
    { numRuns: 20 },
  );
});

test.each(cases.filter(([, , { finds }]) => finds[0] !== 0))(
  '%s contradicts twice what it finds',
  (_, record, example) => {
    const only = alone(record);
    const stated = { id: record.finds.id, value: 2 * wanted(example) };
    const facts = solve(only.network, startOf(only, [...knownOf(example.given), stated]));
    expect(contradictions(only.network, facts).map(({ method }) => method.relation.id)).toContain(record.id);
  },
);
