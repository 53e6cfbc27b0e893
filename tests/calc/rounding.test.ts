import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { roundedText, roundTo, trimmedText, trimZeros, usualRounding } from '../../src/calc/rounding.ts';
import { units } from '../../src/calc/units.ts';

describe('roundTo', () => {
  /** By hand, as the decimal number is written; floating point alone gets the first four wrong. */
  test.each([
    [1.005, 2, '1.01'],
    [0.615, 2, '0.62'],
    [10.235, 2, '10.24'],
    [1.45, 1, '1.5'],
    [-2.5, 0, '-3'],
    [2.5, 0, '3'],
    [0.5, 0, '1'],
    [-0.5, 0, '-1'],
    [0.49999, 0, '0'],
    [-0.4, 0, '0'],
    [-0, 2, '0.00'],
    [1e-7, 3, '0.000'],
    [2.675e-5, 7, '0.0000268'],
    [44, 1, '44.0'],
    [999.96, 1, '1000.0'],
    [1234567.891, 2, '1234567.89'],
    [9007199254740991, 0, '9007199254741000'],
  ])('%d to %d decimals is %s', (x, decimals, text) => {
    expect(roundTo(x, decimals)).toBe(text);
  });

  test('takes dust of a chain of steps for what it is', () => {
    expect(roundTo(0.1 + 0.2 + 0.05, 1)).toBe('0.4');
    expect(roundTo((1.005 / 3) * 3 - 1e-15, 2)).toBe('1.01');
  });

  test('refuses what is no figure', () => {
    for (const x of [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]) {
      expect(() => roundTo(x, 1)).toThrow(RangeError);
    }
    expect(() => roundTo(1e25, 1)).toThrow('too large');
  });

  /** Independent: a decimal number made from whole parts, rounded with whole-number arithmetic. */
  test('rounds every half away from nothing', () => {
    const thousandths = fc.integer({ min: -5_000_000, max: 5_000_000 });
    fc.assert(
      fc.property(thousandths, (n) => {
        const size = Math.abs(n);
        const tens = size % 10;
        const hundredths = (size - tens) / 10 + (tens >= 5 ? 1 : 0);
        const digits = String(hundredths).padStart(3, '0');
        const sign = n < 0 && hundredths > 0 ? '-' : '';
        expect(roundTo(n / 1000, 2)).toBe(`${sign}${digits.slice(0, -2)}.${digits.slice(-2)}`);
      }),
      { seed: 44, numRuns: 3000 },
    );
  });
});

describe('roundedText', () => {
  /** Up, as NAVEDTRA 14081 does 1,478.4 gal to 1,479 and subcourse EN5459 14,414.4 gal to 14,415. */
  test.each([
    [1478.4, 'up', '1479'],
    [14414.4, 'up', '14415'],
    [3.0000000001, 'up', '3'],
    [1e-9, 'up', '0'],
    [0.2, 'up', '1'],
    [44, 'tenth', '44.0'],
    [0.04, 'tenth', '0.04'],
    [-0.04, 'tenth', '-0.04'],
    [0.3, 'whole', '0.3'],
    [1e-9, 'tenth', '0.0'],
    [-1e-9, 'tenth', '0.0'],
    [0.13333, 'hundredth', '0.13'],
    [0.0667, 'hundredth', '0.067'],
    [0.05, 'hundredth', '0.05'],
    [0.1, 'hundredth', '0.10'],
    [0.0999, 'hundredth', '0.10'],
    [0.0004, 'hundredth', '0.0004'],
    [0, 'hundredth', '0.00'],
    [0.8333, 'thousandth', '0.833'],
  ] as const)('%d, %s, is %s', (x, rounding, text) => {
    expect(roundedText(x, rounding)).toBe(text);
  });

  test('what is something is never worded as nothing', () => {
    const x = fc.double({ min: 1e-6, max: 10, noNaN: true });
    const rounding = fc.constantFrom('up', 'whole', 'tenth', 'hundredth', 'thousandth');
    fc.assert(
      fc.property(x, rounding, (x, rounding) => Number(roundedText(x, rounding as 'up')) > 0),
      { seed: 44 },
    );
  });
});

test('noughts come off decimals only', () => {
  expect(['2.50', '3.00', '300', '0.10', '0.0'].map(trimZeros)).toEqual(['2.5', '3', '300', '0.1', '0']);
  expect(trimmedText(12, 6)).toBe('12');
  expect(trimmedText(1 / 3, 6)).toBe('0.333333');
  expect(trimmedText(300, 0)).toBe('300');
});

test('every unit has its usual rounding, and only the inch goes by eighths', () => {
  expect(Object.keys(usualRounding).sort()).toEqual(Object.keys(units).sort());
  const byEighths = Object.entries(usualRounding).flatMap(([unit, rounding]) => (rounding === 'eighths' ? [unit] : []));
  expect(byEighths).toEqual(['in']);
});
