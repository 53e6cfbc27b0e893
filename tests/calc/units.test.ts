import fc from 'fast-check';
import Qty from 'js-quantities';
import { describe, expect, test } from 'vitest';
import { dimensions } from '../../src/calc/dimension.ts';
import { convert } from '../../src/calc/quantity.ts';
import { isUnit, systemOf, type Unit, unitRow, units } from '../../src/calc/units.ts';

const names = Object.keys(units) as Unit[];

/** NIST Handbook 44, Appendix C, General Tables of Units of Measurement: the values given there as exact. */
const exact: readonly (readonly [number, Unit, number, Unit])[] = [
  [1, 'ft', 12, 'in'],
  [1, 'yd', 3, 'ft'],
  [1, 'mi', 5280, 'ft'],
  [1, 'in', 25.4, 'mm'],
  [1, 'ft', 0.3048, 'm'],
  [1, 'yd', 0.9144, 'm'],
  [1, 'mi', 1.609344, 'km'],
  [1, 'yd2', 9, 'ft2'],
  [1, 'acre', 4840, 'yd2'],
  [1, 'acre', 43560, 'ft2'],
  [1, 'ha', 10000, 'm2'],
  [1, 'ft2', 0.09290304, 'm2'],
  [1, 'yd2', 0.83612736, 'm2'],
  [1, 'yd3', 27, 'ft3'],
  [1, 'ft3', 1728 / 231, 'gal'],
  [1, 'gal', 3.785411784, 'L'],
  [1, 'm3', 1000, 'L'],
  [1, 'ft3', 0.028316846592, 'm3'],
  [1, 'ton', 2000, 'lb'],
  [1, 'lb', 0.45359237, 'kg'],
  [1, 't', 1000, 'kg'],
  [1, 'ton', 0.90718474, 't'],
  [1, 'h', 60, 'min'],
  [1, 'min', 60, 's'],
  [88, 'ft/min', 1, 'mph'],
  [60, 'mph', 5280, 'ft/min'],
];

/** Each of our units as js-quantities writes it. Its `ton` is the US short ton. Of its units `a/b*c` is a ÷ (b × c). */
const theirs: Partial<Record<Unit, string>> = {
  ft2: 'ft^2',
  yd2: 'yd^2',
  m2: 'm^2',
  ha: 'hectare',
  ft3: 'ft^3',
  yd3: 'yd^3',
  m3: 'm^3',
  t: 'tonne',
  'lb/ft3': 'lb/ft^3',
  'kg/m3': 'kg/m^3',
  'lb/yd2/in': 'lb/yd^2*in',
  'kg/m2/mm': 'kg/m^2*mm',
  'kg/m2/cm': 'kg/m^2*cm',
  't/m3': 'tonne/m^3',
  'ton/yd3': 'ton/yd^3',
  'lb/yd2': 'lb/yd^2',
  'kg/m2': 'kg/m^2',
  'ton/yd2': 'ton/yd^2',
  'gal/yd2': 'gal/yd^2',
  'L/m2': 'L/m^2',
  'gal/ft2': 'gal/ft^2',
  't/h': 'tonne/h',
  'yd2/h': 'yd^2/h',
  'm2/h': 'm^2/h',
  degF: 'tempF',
  degC: 'tempC',
  'USD/t': 'USD/tonne',
};
const theirName = (unit: Unit): string => theirs[unit] ?? unit;

describe('definitions', () => {
  test.each(exact)('%d %s is %d %s', (number, from, result, to) => {
    expect(convert(number, from, to)).toBeCloseTo(result, 12);
    expect(convert(result, to, from)).toBeCloseTo(number, 12);
  });

  test('the ton is the US short ton, not the long ton of 2,240 lb nor the tonne', () => {
    expect(convert(1, 'ton', 'lb')).toBe(2000);
    expect(Qty(1, 'ton').to('lb').scalar).toBeCloseTo(2000, 9);
  });

  test('feet, yards and short tons are whole numbers of base units, so a limit in feet is held exactly', () => {
    expect([1, 36, 12, 63360].map((inches) => convert(inches, 'in', 'in'))).toEqual([1, 36, 12, 63360]);
    expect(convert(7.5, 'ft', 'in')).toBe(90);
    expect(convert(0.5, 'ton', 'lb')).toBe(1000);
  });
});

describe('temperatures', () => {
  /** Fixed points: ice, steam, and the one figure the two scales share. */
  test.each([
    [32, 0],
    [212, 100],
    [-40, -40],
    [50, 10],
    [-459.67, -273.15],
  ])('%d degF is %d degC', (fahrenheit, celsius) => {
    expect(convert(fahrenheit, 'degF', 'degC')).toBeCloseTo(celsius, 9);
    expect(convert(celsius, 'degC', 'degF')).toBeCloseTo(fahrenheit, 9);
  });
});

/** Published with the conversions printed beside each other. */
describe('printed conversions', () => {
  const printed: readonly (readonly [number, Unit, number, Unit, decimals: number, source: string])[] = [
    [0.05, 'gal/yd2', 0.23, 'L/m2', 2, 'UFC 3-270-01, tack 0.05 to 0.10 gal/yd2 as 0.23 to 0.45 L/m2'],
    [0.1, 'gal/yd2', 0.45, 'L/m2', 2, 'UFC 3-270-01'],
    [0.15, 'gal/yd2', 0.68, 'L/m2', 2, 'UFC 3-250-03, tack 0.05 to 0.15 gal/yd2 as 0.23 to 0.68 L/m2'],
    [110, 'lb/yd2/in', 146, 'lb/ft3', -1, 'NAVEDTRA 14080 p. 8-31 pairs 110 lb/yd2 an inch with 146 lb/ft3'],
    [100, 'degF', 38, 'degC', 0, 'AASHTO M 82 Table 1, flash point 38 C (100 F)'],
    [150, 'degF', 66, 'degC', 0, 'AASHTO M 82 Table 1, flash point 66 C (150 F)'],
  ];
  test.each(printed)('%d %s is %d %s', (number, from, result, to, decimals) => {
    expect(convert(number, from, to)).toBeCloseTo(result, decimals);
  });
});

describe('the table', () => {
  test('every dimension has a unit, and every unit a known dimension and a size', () => {
    const used = new Set(names.map((name) => unitRow(name).dimension));
    expect([...used].sort()).toEqual(Object.keys(dimensions).sort());
    for (const name of names) expect(unitRow(name).size.every((part) => part > 0)).toBe(true);
  });

  test('isUnit knows the units and nothing else', () => {
    expect(names.every(isUnit)).toBe(true);
    for (const name of ['', 'furlong', 'toString', '__proto__', 'Ft', 'constructor']) expect(isUnit(name)).toBe(false);
  });
});

test('a unit is of one system, or of both when there is no other', () => {
  expect((['ton', 'ft', 'gal/yd2', 'degF', 'lb/yd2/in', 'USD/ton', 'acre'] as const).map(systemOf)).toEqual(
    Array(7).fill('us'),
  );
  expect((['t', 'm', 'L/m2', 'degC', 'kg/m2/mm', 'USD/t', 'ha'] as const).map(systemOf)).toEqual(
    Array(7).fill('metric'),
  );
  expect((['min', '%', 'deg', '1', 'USD'] as const).map(systemOf)).toEqual(Array(5).fill(undefined));
});

/** Pairs of units of one dimension. */
const pairs = names.flatMap((a) =>
  names.filter((b) => b !== a && unitRow(a).dimension === unitRow(b).dimension).map((b) => [a, b] as const),
);
const numbers = fc.double({ min: 1e-3, max: 1e5, noNaN: true });

describe('laws', () => {
  /** js-quantities carries the gallon and the acre to nine digits only, so it agrees to 1e-8. */
  test('js-quantities converts alike', () => {
    fc.assert(
      fc.property(fc.constantFrom(...pairs), numbers, ([from, to], number) => {
        const oracle = Qty(number, theirName(from)).to(theirName(to)).scalar;
        expect(Math.abs(convert(number, from, to) - oracle)).toBeLessThanOrEqual(
          1e-8 * Math.max(Math.abs(oracle), 1e-6),
        );
      }),
      { seed: 44, numRuns: 4000 },
    );
  });

  test('there and back again is where it started', () => {
    fc.assert(
      fc.property(fc.constantFrom(...pairs), numbers, ([from, to], number) => {
        const back = convert(convert(number, from, to), to, from);
        expect(Math.abs(back - number)).toBeLessThanOrEqual(1e-12 * Math.max(number, 1000));
      }),
      { seed: 44, numRuns: 2000 },
    );
  });
});
