import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { toBase } from '../../src/calc/quantity.ts';
import { read } from '../../src/calc/read/read.ts';
import { type Rounding, usualRounding } from '../../src/calc/rounding.ts';
import { type Unit, units } from '../../src/calc/units.ts';
import { english } from '../../src/calc/wording/english.ts';
import type { FigureWords } from '../../src/calc/wording/language.ts';
import { sayFigure, sayRange, type WordingOptions } from '../../src/calc/wording.ts';

const say = (number: number, unit: Unit, options?: WordingOptions): string =>
  sayFigure(toBase(number, unit), unit, options);
const range = (low: number, high: number, unit: Unit, options?: WordingOptions): string =>
  sayRange(toBase(low, unit), toBase(high, unit), unit, options);

/** Tons to 0.1, loads and gallons whole and up, feet and minutes whole, rates to 0.01: what a ticket and a tape can show. */
describe('computed figures', () => {
  test.each([
    [44, 'ton', '44.0 tons'],
    [21.15, 't', '21.2 tonnes'],
    [190.909, 'ft', '191 ft'],
    [5280.4, 'ft', '5,280 ft'],
    [213.33, 'gal', '214 gal'],
    [14414.4, 'gal', '14,415 gal'],
    [0.13333, 'gal/yd2', '0.13 gal/sq yd'],
    [0.08333, 'gal/yd2', '0.083 gal/sq yd'],
    [0.05, 'gal/yd2', '0.05 gal/sq yd'],
    [0.004, 'gal/yd2', '0.004 gal/sq yd'],
    [0.2264, 'L/m2', '0.23 L/m²'],
    [400, 'yd2', '400 sq yd'],
    [71500, 'ft2', '71,500 sq ft'],
    [22.222, 'yd3', '22.2 cu yd'],
    [110, 'lb/yd2/in', '110.0 lb/sq yd/in'],
    [2.3494, 'kg/m2/mm', '2.35 kg/m²/mm'],
    [2.5, 'mph', '2.5 mph'],
    [32.6, 'min', '33 min'],
    [1.25, 'h', '1.3 hours'],
    [5, '%', '5%'],
    [50, 'degF', '50 °F'],
    [30, 'deg', '30 degrees'],
    [1.5, '1', '1.5'],
    [1234.5, 'USD', '$1,234.50'],
    [38, 'USD/h', '$38.00/h'],
    [25.4, 'mm', '25 mm'],
    [0.5, 'mi', '0.5 miles'],
  ] as const)('%d %s is worded %s', (number, unit, text) => {
    expect(say(number, unit)).toBe(text);
  });

  test('are rounded as their quantity says', () => {
    expect(say(2.2, '1', { rounding: 'up' })).toBe('3');
    expect(say(12.04, 'ft', { rounding: 'tenth' })).toBe('12.0 ft');
    expect(say(12.5, 'USD', { rounding: 'whole' })).toBe('$13');
    expect(say(25.4, 'mm', { rounding: 'eighths' })).toBe('25 mm');
  });

  test('one of a thing is said in the singular', () => {
    expect(say(1, 'deg')).toBe('1 degree');
    expect(say(1, 'ton', { given: true })).toBe('1 ton');
    expect(say(1, 'h', { given: true })).toBe('1 hour');
    expect(say(1, 'ton')).toBe('1.0 tons');
  });

  test('what is little is not worded as nothing, and dust is', () => {
    expect(say(0.03, 'ton')).toBe('0.03 tons');
    expect(say(0.4, 'ft')).toBe('0.4 ft');
    expect(say(1e-10, 'ton')).toBe('0.0 tons');
    expect(say(-1e-10, 'ton')).toBe('0.0 tons');
  });

  test('come in the unit asked for, whatever the base', () => {
    expect(sayFigure(toBase(3, 'yd2'), 'ft2')).toBe('27 sq ft');
    expect(sayFigure(toBase(60, 'degF'), 'degC')).toBe('16 °C');
  });

  test('below nothing', () => {
    expect(say(-2.5, 'ton')).toBe('-2.5 tons');
    expect(say(-5, 'USD')).toBe('-$5.00');
    expect(say(-40, 'degC')).toBe('-40 °C');
  });

  test('what is no figure is refused', () => {
    for (const number of [Number.NaN, Number.POSITIVE_INFINITY, 1e30])
      expect(() => say(number, 'ton')).toThrow(RangeError);
    expect(() => say(Number.NaN, 'in')).toThrow(RangeError);
    expect(() => say(Number.NaN, 'in', { given: true })).toThrow(RangeError);
    expect(() => say(Number.NaN, 'ft', { feetInches: true })).toThrow(RangeError);
  });
});

describe('inches', () => {
  test.each([
    [2, '2 in'],
    [0.75, '3/4 in (0.75 in)'],
    [1.5, '1 1/2 in (1.5 in)'],
    [2.375, '2 3/8 in (2.375 in)'],
    [2.5 / 3, 'about 7/8 in (0.833 in)'],
    [0.9954545, 'about 1 in (0.995 in)'],
    [0.99999999, '1 in'],
    [0.125, '1/8 in (0.125 in)'],
    [0.1, '0.1 in'],
    [0.0004, '0.0004 in'],
    [0, '0 in'],
    [-0.5, '-1/2 in (-0.5 in)'],
    [1234.25, '1,234 1/4 in (1,234.25 in)'],
  ])('computed %d', (number, text) => {
    expect(say(number, 'in')).toBe(text);
  });

  test.each([
    [1.5, '1 1/2 in'],
    [0.4375, '7/16 in'],
    [300, '300 in'],
    [1.3, '1.3 in'],
    [0.03125, '0.03125 in'],
    [0, '0 in'],
    [toBase(19.05, 'mm'), '3/4 in'],
  ])('given %d', (number, text) => {
    expect(say(number, 'in', { given: true })).toBe(text);
  });

  test('stand as decimals in a formula', () => {
    expect(say(2.5 / 3, 'in', { plain: true })).toBe('0.833 in');
    expect(say(1.5, 'in', { plain: true, given: true })).toBe('1.5 in');
  });
});

describe('feet and inches', () => {
  test.each([
    [5.5, {}, '5 ft 6 in'],
    [5.99, {}, '6 ft'],
    [0.75, {}, '9 in'],
    [1.083, { rounding: 'eighths' }, '1 ft 1 in'],
    [5.55, { rounding: 'eighths' }, '5 ft 6 5/8 in'],
    [-5.5, {}, '-5 ft 6 in'],
    [0.02, {}, '0.02 ft'],
    [0, {}, '0 ft'],
    [12.53125, { given: true }, '12 ft 6 3/8 in'],
    [5.3, { given: true }, '5.3 ft'],
    [1234.5, {}, '1,234 ft 6 in'],
  ] as const)('%d ft, %o', (number, options, text) => {
    expect(say(number, 'ft', { feetInches: true, ...options })).toBe(text);
  });

  test('other units have none', () => {
    expect(say(2, 'm', { feetInches: true })).toBe('2.0 m');
  });
});

test('given figures are echoed, not rounded', () => {
  expect(say(36.55, 'ton', { given: true })).toBe('36.55 tons');
  expect(say(12, 'ft', { given: true })).toBe('12 ft');
  expect(say(0.0667, 'gal/yd2', { given: true })).toBe('0.0667 gal/sq yd');
  expect(say(1200, 'ft', { given: true })).toBe('1,200 ft');
  expect(say(38.5, 'USD/h', { given: true })).toBe('$38.50/h');
  expect(say(0.1 + 0.2, 'ton', { given: true })).toBe('0.3 tons');
});

describe('ranges', () => {
  test.each([
    [42, 48, 'ton', {}, '42.0 to 48.0 tons'],
    [2, 3, 'in', { given: true }, '2 to 3 in'],
    [0.833, 1, 'in', {}, 'about 7/8 to 1 in (0.833 to 1 in)'],
    [0.83, 0.85, 'in', {}, 'about 7/8 in (0.83 to 0.85 in)'],
    [0.5, 0.75, 'in', {}, '1/2 to 3/4 in (0.5 to 0.75 in)'],
    [1, 2, 'in', {}, '1 to 2 in'],
    [40, 60, 'degF', {}, '40 to 60 °F'],
    [80, 90, 'USD', { rounding: 'whole' }, '$80 to 90'],
    [3.01, 3.04, 'ton', {}, '3.0 tons'],
    [5.5, 6, 'ft', { feetInches: true }, '5 ft 6 in to 6 ft'],
    [5.5, 5.51, 'ft', { feetInches: true }, '5 ft 6 in'],
  ] as const)('%d to %d %s', (low, high, unit, options, text) => {
    expect(range(low, high, unit, options)).toBe(text);
  });

  test('run from low to high', () => {
    expect(() => range(2, 1, 'ton')).toThrow('from low to high');
    expect(() => range(1, Number.NaN, 'ton')).toThrow(RangeError);
  });
});

test('another language is another table', () => {
  const spanish: FigureWords = {
    ...english,
    about: (figure) => `unas ${figure}`,
    range: (low, high) => `${low} a ${high}`,
    units: { ...english.units, ton: ['# tonelada', '# toneladas'], in: ['# pulgada', '# pulgadas'] },
  };
  expect(say(1234.5, 'ton', { language: spanish })).toBe('1,234.5 toneladas');
  expect(say(2.5 / 3, 'in', { language: spanish })).toBe('unas 7/8 pulgadas (0.833 pulgadas)');
  expect(range(1, 2, 'ton', { language: { ...spanish, decimal: ',', thousands: '.' } })).toBe('1,0 a 2,0 toneladas');
});

/** Reads a worded figure back: every number it shows, fractions and separators included. Knows nothing of how it was made. */
function numbersIn(text: string): number[] {
  return [...text.matchAll(/(-?)\$?(?:(\d[\d,]*) )?(\d[\d,.]*)(?:\/(\d+))?/g)].map(
    ([, sign, whole = '0', top, under = '1']) => {
      const plain = (digits: string): number => Number(digits.replaceAll(',', ''));
      return (sign ? -1 : 1) * (plain(whole) + plain(top!) / plain(under));
    },
  );
}

const room: Record<Rounding, number> = {
  eighths: 1 / 16,
  up: 1,
  whole: 0.5,
  tenth: 0.05,
  hundredth: 0.005,
  thousandth: 0.0005,
};

describe('a worded figure, read back', () => {
  const unit = fc.constantFrom(...(Object.keys(units) as Unit[]));
  const number = fc.double({ min: -2e4, max: 2e5, noNaN: true });

  test('is within its rounding of the figure, and shows no -0', () => {
    fc.assert(
      fc.property(unit, number, (unit, number) => {
        const text = say(number, unit);
        const [shown, decimal] = numbersIn(text.replace(/m[²³].*/, 'm'));
        expect(text).not.toMatch(/-\$?0(\.0*)?(?![\d.])/);
        expect(Math.abs(shown! - number)).toBeLessThanOrEqual(room[usualRounding[unit]] + 1e-9 * Math.abs(number));
        if (usualRounding[unit] === 'up') expect(shown).toBeGreaterThanOrEqual(number - 1e-6 - 1e-9 * Math.abs(number));
        if (unit === 'in' && decimal !== undefined)
          expect(Math.abs(decimal - number)).toBeLessThanOrEqual(0.0005 + 1e-9);
      }),
      { seed: 44, numRuns: 4000 },
    );
  });

  test('is the very figure when it was given', () => {
    fc.assert(
      fc.property(unit, fc.integer({ min: -200_000, max: 5_000_000 }), (unit, thousandths) => {
        const [shown] = numbersIn(say(thousandths / 1000, unit, { given: true }));
        expect(shown).toBeCloseTo(thousandths / 1000, 6);
      }),
      { seed: 44, numRuns: 2000 },
    );
  });

  test('in feet and inches is within half an inch', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.05, max: 3000, noNaN: true }), (feet) => {
        const text = say(feet, 'ft', { feetInches: true });
        const [, whole = '0', inches = '0'] = /^(?:([\d,]+) ft)? ?(?:(\d+) in)?$/.exec(text)!;
        const shown = Number(whole.replaceAll(',', '')) * 12 + Number(inches);
        expect(Math.abs(shown - feet * 12)).toBeLessThanOrEqual(0.5 + 1e-9);
        expect(Number(inches)).toBeLessThan(12);
      }),
      { seed: 44, numRuns: 1000 },
    );
  });
});

/** Choices are offered in these words and come back as a question. Bare numbers and degrees need a neighbour to tell what they are. */
describe('a given figure, put back in as a question', () => {
  const worded = (Object.keys(units) as Unit[]).filter((unit) => unit !== '1' && unit !== 'deg');

  test.each(worded)('is read as the same figure in %s', (unit) => {
    for (const number of [1, 0.75, 2.5, 1200]) {
      const items = read(say(number, unit, { given: true }));
      expect(items).toHaveLength(1);
      expect(items[0]).toMatchObject({ kind: 'figure', number, unit });
    }
  });
});
