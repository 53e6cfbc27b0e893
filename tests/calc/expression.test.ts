import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Dimension } from '../../src/calc/dimension.ts';
import {
  constant,
  cosine,
  evaluate,
  factsOf,
  inWords,
  type LookupTable,
  larger,
  lookup,
  minus,
  over,
  plus,
  power,
  powersOf,
  roundUp,
  smaller,
  split,
  type Term,
  times,
} from '../../src/calc/expression.ts';
import { fromBase, toBase } from '../../src/calc/quantity.ts';
import type { Unit } from '../../src/calc/units.ts';
import { formulas, valuesWithin } from './formulas.ts';
import { reckon } from './reckon.ts';

const term = (id: string, dimension: Dimension): Term => ({ id, dimension });
const area = term('area', 'area');
const depth = term('depth', 'length');
const width = term('width', 'length');
const unitWeight = term('unit weight', 'density');
const mass = term('mass', 'mass');
const speed = term('speed', 'speed');

/** Facts by id, in the units they are said in. */
const facts = (said: Record<string, readonly [number, Unit]>) => (id: string) => toBase(...said[id]!);

describe('dimensions', () => {
  const table: LookupTable = { id: 'sight', key: 'speed', value: 'length', rows: [[1, 1]] };

  test.each([
    ['area × depth × unit weight', times(area, depth, unitWeight), [0, 1, 0, 0, 0]],
    ['mass over area and unit weight', over(mass, times(area, unitWeight)), [1, 0, 0, 0, 0]],
    ['root of an area', power(area, 0.5), [1, 0, 0, 0, 0]],
    ['depth and depth', plus(depth, width), [1, 0, 0, 0, 0]],
    ['count', roundUp(over(depth, width)), [0, 0, 0, 0, 0]],
    ['table', lookup(speed, table), [1, 0, 0, 0, 0]],
    ['cosine', times(width, cosine(term('angle', 'angle'))), [1, 0, 0, 0, 0]],
    ['split', split(speed, constant(40, 'mph'), width, depth), [1, 0, 0, 0, 0]],
  ])('%s', (_, formula, powers) => {
    expect(powersOf(formula)).toEqual(powers);
  });

  test.each([
    ['feet and tons added', plus(depth, mass), 'the parts of a plus differ'],
    ['an area less a depth', minus(area, depth), 'the parts of a minus differ'],
    ['the larger of unlike things', larger(area, depth), 'the parts of a larger differ'],
    ['feet rounded up', roundUp(depth), 'a count is rounded up'],
    ['cosine of a length', cosine(depth), 'a cosine is taken of an angle'],
    ['a table read by the wrong thing', lookup(depth, table), 'table sight is read by speed'],
    ['a split on unlike things', split(speed, depth, width, width), 'the two sides of a split differ'],
    ['branches of unlike things', split(speed, constant(40, 'mph'), width, area), 'the two branches of a split differ'],
    ['a fault deep inside', times(width, plus(depth, times(area, depth))), 'the parts of a plus differ'],
  ])('%s are refused', (_, formula, message) => {
    expect(() => powersOf(formula)).toThrow(TypeError);
    expect(() => powersOf(formula)).toThrow(message);
  });
});

test('facts are listed once each, in the order they stand', () => {
  expect(factsOf(over(times(area, depth), plus(depth, width)))).toEqual(['area', 'depth', 'width']);
  expect(factsOf(constant(2, 'ft'))).toEqual([]);
});

describe('published cases', () => {
  test('length a load covers: 132,940 lb at 170 lb/yd2, 26 ft wide, is 270.69 ft (Virginia DOT, ch. 9, p. 9-2)', () => {
    const load = over(mass, times(term('rate', 'spread'), width));
    const inches = evaluate(load, facts({ mass: [132940, 'lb'], rate: [170, 'lb/yd2'], width: [26, 'ft'] }));
    expect(fromBase(inches, 'ft')).toBeCloseTo(270.69, 1);
  });

  /** MUTCD merging taper: W S² ÷ 60 up to 40 mph, W S at 45 mph and over; lengths as tabled for a 12 ft lane. */
  test.each([
    [20, 80],
    [25, 125],
    [30, 180],
    [35, 245],
    [40, 320],
    [45, 540],
    [75, 900],
  ])('merging taper, %d mph, 12 ft: %d ft', (mph, feet) => {
    const number = over(speed, constant(1, 'mph'));
    const taper = split(speed, constant(40, 'mph'), over(times(width, power(number, 2)), 60), times(width, number));
    expect(powersOf(taper)).toEqual([1, 0, 0, 0, 0]);
    const inches = evaluate(taper, facts({ speed: [mph, 'mph'], width: [12, 'ft'] }));
    expect(fromBase(inches, 'ft')).toBeCloseTo(feet, 9);
  });

  test('trucks for 75 tons/h, 66 min a round and 14 tons: 5.893, so 6 (NAPA handbook sec. 6.2: always up)', () => {
    const trucks = roundUp(over(times(term('laying', 'output'), term('round', 'time')), mass));
    expect(evaluate(trucks, facts({ laying: [75, 'ton/h'], round: [66, 'min'], mass: [14, 'ton'] }))).toBe(6);
  });
});

describe('steps that choose', () => {
  const rows: LookupTable = {
    id: 'rows',
    key: 'count',
    value: 'count',
    rows: [
      [10, 1],
      [20, 5],
      [30, 9],
    ],
  };
  const read = (key: number): number => evaluate(lookup(constant(key, '1'), rows), () => Number.NaN);

  test('between two rows the next one up is taken, and past the end there is no answer', () => {
    expect([5, 10, 10.0000000001, 10.1, 20, 29, 30].map(read)).toEqual([1, 1, 1, 5, 5, 9, 9]);
    expect(read(31)).toBeNaN();
  });

  test('larger, smaller, cosine', () => {
    const value = (id: string): number => ({ a: 3, b: 4 })[id]!;
    const [a, b] = [term('a', 'count'), term('b', 'count')];
    expect(evaluate(larger(a, b), value)).toBe(4);
    expect(evaluate(smaller(a, b), value)).toBe(3);
    expect(evaluate(cosine(constant(60, 'deg')), value)).toBeCloseTo(0.5, 12);
  });

  test('a root of less than nothing has no answer', () => {
    expect(evaluate(power(constant(-4, '1'), 0.5), () => 0)).toBeNaN();
  });
});

describe('in words', () => {
  const say = (leaf: { op: 'fact'; id: string } | { op: 'constant'; number: number }): string =>
    leaf.op === 'fact' ? leaf.id : String(leaf.number);
  const [a, b, c] = ['a', 'b', 'c'].map((id) => term(id, 'count')) as [Term, Term, Term];

  test.each([
    [times(area, depth, unitWeight), 'area × depth × unit weight'],
    [over(mass, times(area, unitWeight)), 'mass ÷ (area × unit weight)'],
    [over(over(a, b), c), 'a ÷ b ÷ c'],
    [over(a, over(b, c)), 'a ÷ (b ÷ c)'],
    [times(plus(a, b), c), '(a + b) × c'],
    [minus(a, minus(b, c)), 'a − (b − c)'],
    [minus(minus(a, b), c), 'a − b − c'],
    [plus(a, minus(b, c)), 'a + b − c'],
    [minus(a, plus(b, c)), 'a − (b + c)'],
    [power(over(a, b), 0.5), '√(a ÷ b)'],
    [power(plus(a, b), 2), '(a + b)²'],
    [power(power(a, 2), 2), '(a²)²'],
    [power(a, 3), 'a^3'],
    [power(unitWeight, 2), '(unit weight)²'],
    [roundUp(over(a, b)), 'a ÷ b, rounded up'],
    [plus(roundUp(over(a, b)), 1), '(a ÷ b, rounded up) + 1'],
    [over(minus(a, b), minus(c, b)), '(a − b) ÷ (c − b)'],
    [larger(roundUp(over(a, b)), 1), 'the larger of ((a ÷ b, rounded up), 1)'],
    [times(a, cosine(b)), 'a × cos(b)'],
    [split(a, 40, over(b, 60), times(b, c)), 'b ÷ 60 up to 40, above that b × c'],
    [times(lookup(over(a, b), { id: 't', key: 'count', value: 'count', rows: [] }), 2), '(table row for (a ÷ b)) × 2'],
  ])('%o', (formula, text) => {
    expect(inWords(formula, say)).toBe(text);
  });

  test('read back by the usual order of signs, the words come out as the formula does', () => {
    const numbers = fc.infiniteStream(fc.integer({ min: 1, max: 9 }));
    const formula = formulas('times', 'plus', 'over', 'minus', 'power', 'round-up', 'larger', 'smaller', 'cosine');
    fc.assert(
      fc.property(formula, numbers, (formula, numbers) => {
        const values = new Map(factsOf(formula).map((id) => [id, numbers.next().value as number]));
        const within = valuesWithin(formula, (id) => values.get(id)!);
        fc.pre(within.every((value) => Math.abs(value) < 1e6));
        const words = inWords(formula, (leaf) => (leaf.op === 'fact' ? String(values.get(leaf.id)) : ''));
        expect(reckon(words)).toBeCloseTo(within[0]!, 6);
      }),
      { seed: 44, numRuns: 1500 },
    );
  });
});
