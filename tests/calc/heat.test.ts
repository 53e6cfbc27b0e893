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
  /** Error function by its series (Abramowitz and Stegun 7.1.5). */
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

  test.each([80, 60, 45, 30, 20])(
    'no heat through the top, mean down to %i of 100: Carslaw and Jaeger 2.2 (4)',
    (stop) => {
      // With a sealed top the layer is half of one twice as thick in an endless body.
      const time = coolingTime(still(0), stop);
      const s = widths(time);
      const mean = meanOver(0.03, (x) => 50 * (erf((0.03 - x) / s) + erf((0.03 + x) / s)));
      expect(alike(mean, stop)).toBeLessThan(0.003);
    },
  );

  test.each([80, 60, 45, 30, 20])('top held at 0, mean down to %i of 100: the same by images', (stop) => {
    const time = coolingTime(still(1e9), stop);
    const s = widths(time);
    const mean = meanOver(0.03, (x) => 100 * (erf(x / s) - 0.5 * erf((x - 0.03) / s) * 1 - 0.5 * erf((x + 0.03) / s)));
    const mirrored = meanOver(0.03, (x) => 100 * (erf(x / s) + 0.5 * erf((0.03 - x) / s) - 0.5 * erf((0.03 + x) / s)));
    expect(mean).toBeCloseTo(mirrored, 9);
    expect(alike(mirrored, stop)).toBeLessThan(0.006);
  });

  test('a layer so thin that only the top counts cools as the film takes it', () => {
    // Lumped body: m c dT/dt = -h T, on a base that takes nothing because it is as warm as the layer at first.
    const thin = still(20, { thickness: 0.001, base: 100 });
    const time = coolingTime(thin, 99.5);
    const store = mix.density * mix.heatCapacity * 0.001;
    expect(time).toBeGreaterThan((store / 20) * Math.log(100 / 99.5));
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
        expect(alike(minutes(b), minutes(b, fine))).toBeLessThan(0.006);
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
