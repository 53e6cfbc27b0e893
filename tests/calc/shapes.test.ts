import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  cone,
  coneByCircumference,
  featheredAllRound,
  heapHeight,
  parabola,
  prismoid,
  rectangle,
  ridgePile,
  segment,
  segmentRadius,
  taper,
  trapezoid,
  triangle,
  wedge,
} from '../../src/calc/shapes.ts';

/** Midpoint sums: an area or volume by slices, from nothing but the outline. */
function slices(from: number, to: number, at: (x: number) => number, count = 20_000): number {
  const step = (to - from) / count;
  let sum = 0;
  for (let i = 0; i < count; i++) sum += at(from + (i + 0.5) * step);
  return sum * step;
}
const inch = 1 / 12;
/** Short tons of mix of 146.67 lb/ft3 (110 lb/yd2 an inch, NAVEDTRA 14080 p. 8-31). */
const tons = (cubicFeet: number): number => (cubicFeet * 110 * (12 / 9)) / 2000;

/** Worked by hand from the geometry, not published: arithmetic to hold the functions to, in feet. */
describe('worked by hand', () => {
  test.each([
    ['feather 12 × 20 ft from 1.5 in, ft3', wedge(20, 12, 1.5 * inch), 15, 0.06],
    ['the same in tons', tons(wedge(20, 12, 1.5 * inch)), 1.1, 0.006],
    ['taper 12 × 30 ft from 1.5 to 0.5 in, tons', tons(taper(30, 12, 1.5 * inch, 0.5 * inch)), 2.2, 0.006],
    [
      '80 ft at 1.5 in and two 20 ft feathers, tons',
      tons(taper(80, 12, 1.5 * inch, 1.5 * inch) + 2 * wedge(20, 12, 1.5 * inch)),
      11,
      0.01,
    ],
    ['side wedge 0 to 1.5 in over 12 × 200 ft, tons', tons(wedge(200, 12, 1.5 * inch)), 11, 0.01],
    ['40 × 12 ft, 2 ft feather all round, 1 in, ft3', featheredAllRound(40, 12, 2, inch), 31.778, 0.01],
    ['triangular rut 3 ft × 1 in × 500 ft, ft3', triangle(3, inch) * 500, 62.5, 0.06],
    ['the same in tons', tons(triangle(3, inch) * 500), 4.583, 0.005],
    ['parabolic rut 3 ft × 1 in × 500 ft, ft3', parabola(3, inch) * 500, 83.33, 0.01],
    ['both wheel paths in tons', tons(parabola(3, inch) * 500) * 2, 12.22, 0.006],
    ['radius of a segment 3 ft × 1 in, ft', segmentRadius(3, inch), 13.5417, 0.001],
    ['its section, ft2', segment(3, inch), 0.16677, 1e-5],
    ['cone 40 ft across and 15 ft high, ft3', cone(40, 15), 6283.2, 0.1],
    ['the same by the tape round its foot', coneByCircumference(125.66, 15), 6283.2, 0.5],
    ['height of 40 ft at 37 degrees, ft', heapHeight(40, 37), 15.07, 0.01],
    ['ridge pile 100 × 40 ft at 37 degrees, ft3', ridgePile(100, 40, heapHeight(40, 37)), 24398, 1],
    ['triangular row 3 ft × 1 ft, ft2', triangle(3, 1), 1.5, 0.006],
    ['flat-topped row 3 and 1 ft × 1 ft, ft2', trapezoid(3, 1, 1), 2, 0.006],
    ['parabolic row 3 ft × 1 ft, ft2', parabola(3, 1), 2, 0.006],
    ['pyramid on 6 ft2, 30 ft, ft3', prismoid(30, 6, 6 / 4, 0), 60, 0.01],
  ])('%s', (_, result, expected, within) => {
    expect(Math.abs(result - expected)).toBeLessThanOrEqual(within);
  });
});

/** Lengths a patch, a rut or a pile can have. */
const length = fc.double({ min: 0.1, max: 300, noNaN: true });
const close = (a: number, b: number, within = 1e-6): void => {
  expect(Math.abs(a - b)).toBeLessThanOrEqual(within * Math.max(Math.abs(a), Math.abs(b)));
};
const runs = { seed: 44, numRuns: 60 };

describe('by slices', () => {
  test('taper and wedge', () => {
    fc.assert(
      fc.property(length, length, length, length, (l, w, a, b) => {
        close(
          taper(l, w, a, b),
          slices(0, l, (x) => w * (a + ((b - a) * x) / l)),
        );
        close(
          wedge(l, w, a),
          slices(0, w, (y) => (l * a * y) / w),
        );
      }),
      runs,
    );
  });

  test('a patch feathered all round, sliced level: each level is a rectangle', () => {
    fc.assert(
      fc.property(length, length, length, fc.double({ min: 0, max: 0.5, noNaN: true }), (l, w, t, share) => {
        const f = share * Math.min(l, w);
        const level = (z: number): number => (l - (2 * f * z) / t) * (w - (2 * f * z) / t);
        close(featheredAllRound(l, w, f, t), slices(0, t, level));
      }),
      runs,
    );
  });

  test('triangle, parabola, trapezoid', () => {
    fc.assert(
      fc.property(length, length, length, (w, top, h) => {
        close(
          triangle(w, h),
          slices(-w / 2, w / 2, (x) => h * (1 - Math.abs((2 * x) / w))),
        );
        close(
          parabola(w, h),
          slices(-w / 2, w / 2, (x) => h * (1 - ((2 * x) / w) ** 2)),
        );
        close(
          trapezoid(w, top, h),
          slices(0, h, (z) => w + ((top - w) * z) / h),
        );
      }),
      runs,
    );
  });

  test('segment: the bow of its circle', () => {
    fc.assert(
      fc.property(length, fc.double({ min: 0.01, max: 0.5, noNaN: true }), (w, share) => {
        const d = share * w;
        const radius = segmentRadius(w, d);
        const bow = (x: number): number => Math.sqrt(radius ** 2 - x ** 2) - (radius - d);
        close(segment(w, d), slices(-w / 2, w / 2, bow), 1e-5);
      }),
      runs,
    );
  });

  test('cone and ridge pile, sliced level', () => {
    fc.assert(
      fc.property(length, length, length, (d, h, more) => {
        close(
          cone(d, h),
          slices(0, h, (z) => (Math.PI / 4) * (d * (1 - z / h)) ** 2),
        );
        const ridge = (z: number): number => {
          const across = d * (1 - z / h);
          return more * across + (Math.PI / 4) * across ** 2;
        };
        close(ridgePile(d + more, d, h), slices(0, h, ridge));
      }),
      runs,
    );
  });
});

describe('known geometry', () => {
  test('half a circle is a segment', () => {
    close(segment(2, 1), Math.PI / 2, 1e-12);
    close(segmentRadius(2, 1), 1, 1e-12);
  });

  test('a deep segment is more than half its circle', () => {
    // Three quarters of the way up a circle of radius 1: the circle less the cap of a third of a turn.
    const cap = Math.PI / 3 - Math.sqrt(3) / 4;
    close(segment(Math.sqrt(3), 1.5), Math.PI - cap, 1e-12);
  });

  test('a shallow rut is a parabola to less than a thousandth', () => {
    close(segment(36, 1), parabola(36, 1), 1e-3);
  });

  test('sphere, cone and cylinder are prismoids', () => {
    close(prismoid(2, 0, Math.PI, 0), (4 / 3) * Math.PI, 1e-12);
    close(prismoid(15, (Math.PI / 4) * 40 ** 2, (Math.PI / 4) * 20 ** 2, 0), cone(40, 15), 1e-12);
    close(prismoid(3, 5, 5, 5), 15, 1e-12);
  });

  test('without a feather it is a box, with feathers that meet a pyramid or a roof', () => {
    close(featheredAllRound(40, 12, 0, 2), rectangle(40, 12) * 2, 1e-12);
    close(featheredAllRound(12, 12, 6, 2), (12 * 12 * 2) / 3, 1e-12);
  });

  test('as long as wide, a ridge pile is a cone', () => {
    close(ridgePile(40, 40, 15), cone(40, 15), 1e-12);
  });

  test('at 45 degrees a heap is half as high as wide', () => {
    close(heapHeight(40, 45), 20, 1e-12);
  });
});

describe('what is no shape is refused', () => {
  test.each([
    ['a negative width', () => rectangle(10, -1), 'width cannot be -1'],
    ['no figure', () => taper(10, 10, Number.NaN, 1), 'from cannot be NaN'],
    ['feathers that overlap', () => featheredAllRound(10, 3, 2, 1), 'wider than the patch'],
    ['a segment without depth', () => segment(3, 0), 'no radius'],
    ['a heap standing upright', () => heapHeight(10, 90), 'not at 90'],
    ['a pile wider than long', () => ridgePile(10, 20, 5), 'at least as long as wide'],
  ])('%s', (_, call, message) => {
    expect(call).toThrow(RangeError);
    expect(call).toThrow(message);
  });
});
