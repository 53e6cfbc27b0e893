import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Ends, ends } from '../../src/calc/ends.ts';
import {
  constant,
  cosine,
  evaluate,
  factsOf,
  type LookupTable,
  lookup,
  minus,
  over,
  power,
  roundUp,
  split,
  type Term,
  times,
} from '../../src/calc/expression.ts';
import { formulas, valuesWithin } from './formulas.ts';

const [a, b] = ['a', 'b'].map((id) => ({ id, dimension: 'count' })) as [Term, Term];
const angle: Term = { id: 'angle', dimension: 'angle' };
const between = (ranges: Record<string, Ends>) => (id: string) => ranges[id]!;

describe('by hand', () => {
  const rows: LookupTable = {
    id: 'dip',
    key: 'count',
    value: 'count',
    rows: [
      [10, 5],
      [20, 1],
      [30, 9],
    ],
  };

  test.each([
    ['a quotient: low over high to high over low', over(a, b), { a: [2, 4], b: [1, 2] }, [1, 4]],
    ['a root of a quotient, not of the two lows', power(over(a, b), 0.5), { a: [1, 16], b: [1, 4] }, [0.5, 4]],
    ['a difference', minus(a, b), { a: [5, 6], b: [1, 3] }, [2, 5]],
    ['a square that dips to nothing', power(a, 2), { a: [-2, 1] }, [0, 4]],
    ['a cube that runs through it', power(a, 3), { a: [-2, 1] }, [-8, 1]],
    ['loads', roundUp(over(a, b)), { a: [40, 46], b: [14, 15] }, [3, 4]],
    ['a cosine past the top', cosine(angle), { angle: [-60, 0] }, [0.5, 1]],
    ['a cosine over the top', cosine(angle), { angle: [-10, 60] }, [0.5, 1]],
    ['a cosine through the bottom', cosine(angle), { angle: [120, 240] }, [-1, -0.5]],
    ['a table with a dip between its ends', lookup(a, rows), { a: [5, 25] }, [1, 9]],
    ['a table within one row', lookup(a, rows), { a: [11, 19] }, [1, 1]],
    ['both branches of a split', split(a, 40, times(a, 2), times(a, 10)), { a: [30, 50] }, [60, 500]],
    ['one branch, the limit included', split(a, 40, times(a, 2), times(a, 10)), { a: [30, 40] }, [60, 80]],
    ['a constant', constant(7, '1'), {}, [7, 7]],
  ] as const)('%s', (_, formula, ranges, expected) => {
    const found = ends(formula, between(ranges as unknown as Record<string, Ends>));
    expect(found[0]).toBeCloseTo(expected[0], 12);
    expect(found[1]).toBeCloseTo(expected[1], 12);
  });

  test('there are none over the end of a table, or divided by what may be nothing', () => {
    expect(ends(lookup(a, rows), between({ a: [25, 35] })).every(Number.isFinite)).toBe(false);
    expect(ends(over(1, a), between({ a: [-1, 1] })).every(Number.isFinite)).toBe(false);
    expect(ends(power(a, -1), between({ a: [-1, 1] })).every(Number.isFinite)).toBe(false);
    expect(ends(power(a, 0.5), between({ a: [-1, 1] })).every(Number.isFinite)).toBe(false);
  });
});

const range = fc
  .tuple(fc.double({ min: 0.5, max: 50, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true }))
  .map(([low, share]): Ends => [low, low * (1 + share)]);
const ranges = fc.infiniteStream(range);
/** Rounding of floating point, which the two ways of reckoning need not share. */
const room = (value: number): number => 1e-9 * Math.max(1, Math.abs(value));

/** A random formula with a range for each of its facts. */
function ranged(...ops: Parameters<typeof formulas>) {
  return fc.tuple(formulas(...ops), ranges).map(([formula, ranges]) => {
    const facts = new Map(factsOf(formula).map((id) => [id, ranges.next().value as Ends]));
    return { formula, facts, found: ends(formula, (id) => facts.get(id)!) };
  });
}

test('every point between the ends of the facts comes out between the ends', () => {
  const formula = ranged('times', 'over', 'plus', 'minus', 'power', 'larger', 'smaller', 'round-up', 'cosine');
  const places = fc.infiniteStream(fc.double({ min: 0, max: 1, noNaN: true }));
  fc.assert(
    fc.property(formula, places, ({ formula, facts, found: [low, high] }, places) => {
      for (let i = 0; i < 10; i++) {
        const point = new Map(
          [...facts].map(([id, [from, to]]) => [id, from + (to - from) * (places.next().value as number)]),
        );
        const within = valuesWithin(formula, (id) => point.get(id)!);
        fc.pre(within.every((value) => Math.abs(value) < 1e6) && Number.isFinite(low) && Number.isFinite(high));
        expect(within[0]).toBeGreaterThanOrEqual(low - room(low));
        expect(within[0]).toBeLessThanOrEqual(high + room(high));
      }
    }),
    { seed: 44, numRuns: 500 },
  );
});

test('of steps that only rise or fall the ends are exact: some corner reaches each', () => {
  const formula = ranged('times', 'over', 'plus', 'power', 'larger', 'smaller', 'round-up');
  fc.assert(
    fc.property(formula, ({ formula, facts, found: [low, high] }) => {
      fc.pre(facts.size <= 8);
      const ids = [...facts.keys()];
      const corners = Array.from({ length: 2 ** ids.length }, (_, corner) =>
        evaluate(formula, (id) => facts.get(id)![(corner >> ids.indexOf(id)) & 1]!),
      );
      const [least, most] = [Math.min(...corners), Math.max(...corners)];
      fc.pre(most < 1e9);
      expect(Math.abs(low - least)).toBeLessThanOrEqual(room(least));
      expect(Math.abs(high - most)).toBeLessThanOrEqual(room(most));
    }),
    { seed: 44, numRuns: 500 },
  );
});

test('where a fact stands twice the ends are wide, never narrow', () => {
  const formula = over(minus(a, b), minus(times(a, 2), b));
  const facts = between({ a: [10, 20], b: [1, 2] });
  const [low, high] = ends(formula, facts);
  for (const x of [10, 13, 20]) {
    for (const y of [1, 1.7, 2]) {
      const value = evaluate(formula, (id) => (id === 'a' ? x : y));
      expect(value).toBeGreaterThan(low);
      expect(value).toBeLessThan(high);
    }
  }
});
