import { describe, expect, test } from 'vitest';
import { evaluate, inWords, larger, over, plus, roundUp, times } from '../../src/calc/expression.ts';
import { fromBase, toBase } from '../../src/calc/quantity.ts';
import { methodsOf, type RelationShape } from '../../src/calc/relation.ts';
import { area, depth, length, lifts, mass, relations, thickest, weight, width } from './patch.ts';

const inside = (relation: RelationShape): string[] =>
  methodsOf(relation).map(
    ({ finds, by }) => `${finds} = ${inWords(by, (leaf) => (leaf.op === 'fact' ? leaf.id : '1'))}`,
  );

describe('the ways of working a relation', () => {
  test('itself first, then turned round for each fact', () => {
    expect(inside({ id: 'mass', finds: mass, by: times(area, depth, weight) })).toEqual([
      'mass = area × depth × weight',
      'area = mass ÷ (depth × weight)',
      'depth = mass ÷ (area × weight)',
      'weight = mass ÷ (area × depth)',
    ]);
  });

  test('only itself when it must not be turned round, or cannot be', () => {
    expect(inside({ id: 'area', finds: area, by: times(length, width), bothWays: false })).toEqual([
      'area = length × width',
    ]);
    const counted: RelationShape = { id: 'lifts', finds: lifts, by: larger(roundUp(over(depth, thickest)), 1) };
    expect(methodsOf(counted).map(({ finds }) => finds)).toEqual(['lifts']);
  });

  test('what each needs is what stands in it, and it says where it comes from', () => {
    const relation = relations.find(({ id }) => id === 'order')!;
    expect(methodsOf(relation).map(({ finds, needs }) => [finds, needs])).toEqual([
      ['order', ['mass', 'waste']],
      ['mass', ['order', 'waste']],
      ['waste', ['order', 'mass']],
    ]);
    expect(methodsOf(relation).every((method) => method.relation === relation)).toBe(true);
  });
});

describe('dimensions', () => {
  test('that do not agree are refused with the relation and what is wrong', () => {
    const short: RelationShape = { id: 'short', finds: mass, by: times(area, depth) };
    expect(() => methodsOf(short)).toThrow(TypeError);
    expect(() => methodsOf(short)).toThrow(
      'relation short: the formula has powers [3,0,0,0,0] of length, mass, time, temperature and money, but mass is a mass, [0,1,0,0,0]',
    );
  });

  test('that do not agree inside the formula are refused likewise', () => {
    const mixed: RelationShape = { id: 'mixed', finds: mass, by: plus(mass, area) };
    expect(() => methodsOf(mixed)).toThrow('relation mixed: the parts of a plus differ in dimension');
  });
});

/** EN5459 (US Army), plant-mix example: 650 × 110 ft, 2 in, 147 lb/ft3: 650 × 110 × 2 × 147 ÷ 24,000 tons. */
test('a published case, each member in turn the unknown', () => {
  const facts = new Map([
    ['mass', toBase((650 * 110 * 2 * 147) / 24_000, 'ton')],
    ['area', toBase(650 * 110, 'ft2')],
    ['depth', toBase(2, 'in')],
    ['weight', toBase(147, 'lb/ft3')],
  ]);
  expect(fromBase(facts.get('mass')!, 'ton')).toBeCloseTo(875.875, 9);
  const relation = relations.find(({ id }) => id === 'mass')!;
  for (const { finds, by } of methodsOf(relation)) {
    const found = evaluate(by, (id) => facts.get(id)!);
    expect(found / facts.get(finds)!).toBeCloseTo(1, 12);
  }
});
