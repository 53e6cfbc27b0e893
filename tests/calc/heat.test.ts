import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { coolingTime, type Layer, type Mesh } from '../../src/calc/heat.ts';
import { type Band, explicit, minutes, mix, radiating, road } from './heat-oracle.ts';

const fine: Mesh = { cells: 32, cellGrowth: 1.07, stepGrowth: 1.03, firstStep: 1e-5 };
const alike = (a: number, b: number): number => Math.abs(a / b - 1);
const still = (film: number, overrides: Partial<Layer> = {}): Layer => ({
  thickness: 0.03,
  start: 100,
  base: 0,
  air: 0,
  matter: mix,
  film: () => film,
  ...overrides,
});

describe('against exact solutions', () => {
  const diffusivity = mix.conductivity / (mix.heatCapacity * mix.density);
  /** Error function by its power series. */
  const erf = (x: number): number => {
    if (x > 5) return 1;
    let [term, sum] = [x, x];
    for (let n = 1; n < 120; n++) {
      term *= -(x * x) / n;
      sum += term / (2 * n + 1);
    }
    return (2 / Math.sqrt(Math.PI)) * sum;
  };
  const meanOver = (thickness: number, at: (x: number) => number): number => {
    const slices = 2000;
    let sum = 0;
    for (let i = 0; i < slices; i++) sum += at(((i + 0.5) * thickness) / slices);
    return sum / slices;
  };
  const widths = (time: number): number => 2 * Math.sqrt(diffusivity * time);

  test.each([80, 60, 45, 30, 20])('no heat through the top, mean down to %i of 100', (stop) => {
    // With a sealed top the layer is half of one twice as thick in an endless body.
    const s = widths(coolingTime(still(0), stop));
    const mean = meanOver(0.03, (x) => 50 * (erf((0.03 - x) / s) + erf((0.03 + x) / s)));
    expect(alike(mean, stop)).toBeLessThan(0.003);
  });

  test.each([80, 60, 45, 30, 20])('top held at 0, mean down to %i of 100', (stop) => {
    // The same with a mirror image as far below 0.
    const s = widths(coolingTime(still(1e9), stop));
    const mean = meanOver(0.03, (x) => 50 * (2 * erf(x / s) + erf((0.03 - x) / s) - erf((0.03 + x) / s)));
    expect(alike(mean, stop)).toBeLessThan(0.006);
  });

  test.each([95, 90, 80, 70])('film on a half-space as warm as its top layer, mean down to %i of 100', (stop) => {
    const [film, thickness] = [25, 0.01];
    const time = coolingTime(still(film, { thickness, base: 100 }), stop);
    const s = widths(time);
    const b = (film * s) / (2 * mix.conductivity);
    const at = (x: number): number =>
      erf(x / s) + Math.exp((film * x) / mix.conductivity + b * b) * (1 - erf(x / s + b));
    expect(alike(100 * meanOver(thickness, at), stop)).toBeLessThan(0.003);
  });
});

describe('against an independent explicit solution', () => {
  const bands: readonly Band[] = [
    { inches: 1, mix: 300, road: 60, wind: 10 },
    { inches: 0.5, mix: 250, road: 40, wind: 10 },
    { inches: 2, mix: 300, road: 80, wind: 10 },
    { inches: 1.5, mix: 275, road: 50, wind: 0 },
  ];
  test.each(bands)('$inches in at $mix on $road, wind $wind', (band) => {
    expect(alike(minutes(band), explicit(band))).toBeLessThan(0.01);
  });
});

describe('against a closed form fitted to such solutions', () => {
  // minutes = 6.71 L^1.546 (1/q - 1)^1.062 at 10 mph, q = (175 - road) / (mix - road): rms 3 %, worst 14 %.
  const closed = (inches: number, hot: number, base: number): number =>
    6.71 * inches ** 1.546 * ((hot - base) / (175 - base) - 1) ** 1.062;

  test('within its worst', () => {
    for (const inches of [0.5, 0.75, 1, 1.5, 2, 3]) {
      for (const base of [40, 60, 80, 90]) {
        for (const hot of [225, 250, 275, 300, 325]) {
          const worked = minutes({ inches, mix: hot, road: base, wind: 10 });
          expect(alike(worked, closed(inches, hot, base)), `${inches} in, ${hot} on ${base}`).toBeLessThan(0.15);
        }
      }
    }
  });
});

const band = fc.record({
  inches: fc.double({ min: 0.4, max: 3, noNaN: true }),
  mix: fc.double({ min: 210, max: 340, noNaN: true }),
  road: fc.double({ min: 20, max: 130, noNaN: true }),
  wind: fc.double({ min: 0, max: 30, noNaN: true }),
});

describe('laws', () => {
  test('a finer mesh gives the same', () => {
    fc.assert(
      fc.property(band, (b) => {
        expect(alike(minutes(b), minutes(b, fine))).toBeLessThan(0.01);
      }),
      { numRuns: 40 },
    );
  });

  const drivers: readonly (readonly [keyof Band, 1 | -1])[] = [
    ['inches', 1],
    ['mix', 1],
    ['road', 1],
    ['wind', -1],
  ];
  test.each(drivers)('more %s never goes the wrong way', (driver, sense) => {
    fc.assert(
      fc.property(band, fc.double({ min: 1.01, max: 1.2, noNaN: true }), (b, by) => {
        const more = { ...b, [driver]: b[driver] * by + (driver === 'wind' ? 1 : 0) };
        expect(sense * (minutes(more) - minutes(b))).toBeGreaterThan(0);
      }),
      { numRuns: 60 },
    );
  });

  test('air, and the stop', () => {
    fc.assert(
      fc.property(band, (b) => {
        const at = road(b);
        expect(coolingTime({ ...at, air: at.air + 5, film: radiating(b.wind, at.air + 5) }, 79)).toBeGreaterThan(
          coolingTime(at, 79),
        );
        expect(coolingTime(at, 75)).toBeGreaterThan(coolingTime(at, 79));
      }),
      { numRuns: 40 },
    );
  });

  test('time goes with the square of the thickness where the film scales with it', () => {
    // The equation in L²/a: twice the layer under half the film takes four times as long.
    expect(coolingTime(still(10, { thickness: 0.06 }), 50) / coolingTime(still(20), 50)).toBeCloseTo(4, 6);
  });
});

describe('ends', () => {
  test('a layer no warmer than the stop takes no time', () => {
    expect(coolingTime(still(20, { start: 50 }), 50)).toBe(0);
  });
  test('between a base and air as warm as the stop there is no end', () => {
    expect(coolingTime(still(20, { base: 60, air: 60 }), 60)).toBeNaN();
  });
  test('nor where it does not come within the longest time looked at', () => {
    expect(coolingTime(still(0, { base: 49.99 }), 50)).toBeNaN();
  });
});
