import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { averageEndArea, bySimpson, byTrapezoids } from '../../src/calc/readings.ts';
import { cone } from '../../src/calc/shapes.ts';

/** Depths in inches under a straightedge at every foot, and sections in ft2 at every 25 ft. */
const depths = [0, 0.4, 0.8, 1.0, 0.7, 0.3, 0].map((inches) => inches / 12);
const sections = [0, 0.27, 0.35, 0.18, 0];

/** Worked by hand: 3.2 in over 1 ft each; 1 ÷ 3 × (4 × 1.7 + 2 × 1.5) in; 25 × 0.8; 25 ÷ 3 × (4 × 0.45 + 2 × 0.35). */
test('worked by hand', () => {
  expect(byTrapezoids(1, depths)).toBeCloseTo(3.2 / 12, 12);
  expect(bySimpson(1, depths)).toBeCloseTo(9.8 / 36, 12);
  expect(averageEndArea(25, sections)).toBeCloseTo(20, 12);
  expect(bySimpson(25, sections)).toBeCloseTo(62.5 / 3, 12);
});

test('average end area makes half too much of what runs out to a point', () => {
  expect(averageEndArea(30, [6, 0])).toBe(90);
  expect(averageEndArea(15, [(Math.PI / 4) * 40 ** 2, 0])).toBeCloseTo(1.5 * cone(40, 15), 9);
});

describe('laws', () => {
  const readings = fc.array(fc.double({ min: 0, max: 10, noNaN: true }), { minLength: 2, maxLength: 30 });
  const step = fc.double({ min: 0.1, max: 50, noNaN: true });

  test('trapezoids, one by one', () => {
    fc.assert(
      fc.property(step, readings, (step, readings) => {
        const one = readings.slice(1).reduce((sum, reading, i) => sum + (step * (reading + readings[i]!)) / 2, 0);
        expect(byTrapezoids(step, readings)).toBeCloseTo(one, 8);
      }),
      { seed: 44 },
    );
  });

  /** Between two steps Simpson's rule is exact for a parabola, and for a cubic. */
  test('a parabola or cubic is taken exactly by Simpson', () => {
    const factor = fc.double({ min: 0, max: 3, noNaN: true });
    fc.assert(
      fc.property(factor, factor, factor, factor, fc.integer({ min: 1, max: 6 }), (a, b, c, d, pairs) => {
        const at = (x: number): number => a + b * x + c * x ** 2 + d * x ** 3;
        const end = 2 * pairs;
        const exact = a * end + (b * end ** 2) / 2 + (c * end ** 3) / 3 + (d * end ** 4) / 4;
        const taken = bySimpson(
          1,
          Array.from({ length: end + 1 }, (_, i) => at(i)),
        );
        expect(Math.abs(taken - exact)).toBeLessThanOrEqual(1e-10 * Math.max(1, exact));
      }),
      { seed: 44 },
    );
  });

  test('the order of reading from either end does not matter', () => {
    fc.assert(
      fc.property(step, readings, (step, readings) => {
        expect(byTrapezoids(step, readings)).toBeCloseTo(byTrapezoids(step, [...readings].reverse()), 8);
      }),
      { seed: 44 },
    );
  });
});

describe('what cannot be taken is refused', () => {
  test('an odd number of steps by Simpson', () => {
    expect(() => bySimpson(1, [0, 1, 1, 0])).toThrow(RangeError);
    expect(() => bySimpson(1, [0, 1, 1, 0])).toThrow('even number of steps');
  });

  test('fewer than two readings, and readings that are none', () => {
    expect(() => byTrapezoids(1, [])).toThrow('at least two');
    expect(() => bySimpson(1, [1])).toThrow('at least two');
    expect(() => averageEndArea(1, [1, -1])).toThrow('reading 2 cannot be -1');
    expect(() => averageEndArea(-1, [1, 1])).toThrow('step cannot be -1');
    expect(() => byTrapezoids(1, [1, Number.NaN])).toThrow(RangeError);
  });
});
