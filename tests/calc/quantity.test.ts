import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  add,
  compare,
  convert,
  fromBase,
  inUnit,
  of,
  type Quantity,
  roundUp,
  toBase,
} from '../../src/calc/quantity.ts';

describe('quantities', () => {
  test('are read back in any unit of their dimension', () => {
    expect(inUnit(of(3, 'yd'), 'ft')).toBe(9);
    expect(inUnit(of(88, 'ft/min'), 'mph')).toBeCloseTo(1, 12);
    expect(inUnit(of(0, 'degC'), 'degF')).toBe(32);
  });

  test('add up when they are of one dimension', () => {
    expect(inUnit(add(of(5, 'ft'), of(6, 'in')), 'in')).toBe(66);
    expect(inUnit(add(of(1, 'ton'), of(500, 'lb')), 'ton')).toBe(1.25);
  });

  test('of two dimensions do not compile together, and throw where the compiler cannot see', () => {
    // @ts-expect-error feet and tons
    expect(() => add(of(1, 'ft'), of(1, 'ton'))).toThrow(TypeError);
    // @ts-expect-error a rate of tack is a volume over an area, and no thickness
    expect(() => add(of(1, 'in'), of(0.05, 'gal/yd2'))).toThrow(TypeError);
    // @ts-expect-error feet read in tons
    expect(() => inUnit(of(1, 'ft'), 'ton')).toThrow('ton is of mass, where length is wanted');
    const hidden = of(1, 'ton') as Quantity;
    expect(() => add<'length'>(of(1, 'ft'), hidden as Quantity<'length'>)).toThrow(TypeError);
    expect(() => convert(1, 'ft', 'gal')).toThrow('gal is of volume, where length is wanted');
  });

  test('are made of figures only', () => {
    for (const number of [Number.NaN, Number.POSITIVE_INFINITY]) expect(() => of(number, 'ft')).toThrow(RangeError);
  });
});

describe('compare', () => {
  test('forgives float dust and nothing a tape can read', () => {
    expect(compare(0.1 + 0.2, 0.3)).toBe(0);
    expect(compare(toBase(25.4, 'mm'), toBase(1, 'in'))).toBe(0);
    expect(compare(1.0001, 1)).toBe(1);
    expect(compare(-2, -1)).toBe(-1);
    expect(compare(0, 0)).toBe(0);
    expect(compare(0, 1e-6)).toBe(-1);
  });

  test('is the same way round from either side', () => {
    const number = fc.double({ min: -1e6, max: 1e6, noNaN: true });
    fc.assert(
      fc.property(number, number, (a, b) => compare(a, b) + compare(b, a) === 0),
      { seed: 44 },
    );
  });
});

describe('roundUp', () => {
  /** Loads, lifts and trucks: 101.2 tons in 14 ton loads is 8 loads; NAPA handbook sec. 6.2 takes 14 trucks for 13.1. */
  test.each([
    [101.2 / 14, 8],
    [13.1, 14],
    [3.0000000001, 3],
    [0.1 * 3 * 10, 3],
    [2.999999, 3],
    [3.000001, 4],
    [0, 0],
    [1e-12, 0],
    [-0.4, 0],
    [-2.5, -2],
  ])('%d is %d', (number, whole) => {
    expect(roundUp(number)).toBe(whole);
  });

  test('76.2 mm is three lifts of 25.4', () => {
    expect(roundUp(toBase(76.2, 'mm') / toBase(25.4, 'mm'))).toBe(3);
  });
});

test('base and unit undo each other', () => {
  fc.assert(
    fc.property(
      fc.constantFrom('ft', 'gal/yd2', 'degC', 'kg/m2/mm', 'ton/h', '%'),
      fc.double({ min: 1e-3, max: 1e5, noNaN: true }),
      (unit, number) => {
        expect(Math.abs(fromBase(toBase(number, unit), unit) - number)).toBeLessThanOrEqual(
          1e-12 * Math.max(number, 100),
        );
      },
    ),
    { seed: 44, numRuns: 500 },
  );
});
