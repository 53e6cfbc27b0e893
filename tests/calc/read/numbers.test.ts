import { describe, expect, it } from 'vitest';
import { figure, figures, short } from './reads.ts';

describe('spelling and signs of one number', () => {
  it.each([
    ['1 1/2 in', '1-1/2 in', '1 - 1/2 in', '1½ in', '1.5 in', '1.1/2 in', '1 + 1/2 in', '1 and 1/2 in'],
    [
      'one and a half inches',
      'one and one-half inch',
      'an inch and a half',
      'inch & a half',
      'inch-and-a-half',
      '1.50"',
    ],
    [
      'one point five inches',
      'una pulgada y media',
      'pulgada y media',
      '1,5 pulgadas',
      '1 and a half inch',
      'inch and half',
    ],
  ])('%s and the others are 1.5 in', (...texts) => {
    for (const text of texts) expect(figure(text), text).toMatchObject({ number: 1.5, unit: 'in' });
  });

  it.each([
    ['zero', 0],
    ['twelve', 12],
    ['twenty-five', 25],
    ['twenty five', 25],
    ['a hundred', 100],
    ['hundred and fifty', 150],
    ['two hundred fifty', 250],
    ['two hundred and fifty', 250],
    ['nineteen hundred', 1900],
    ['a thousand', 1000],
    ['two thousand five hundred', 2500],
    ['nine thousand nine hundred ninety-nine', 9999],
    ['twelve thousand', 12_000],
    ['one fifty', 150],
    ['dozen', 12],
    ['half a dozen', 6],
    ['two dozen', 24],
    ['2 thousand', 2000],
    ['treinta y cinco', 35],
    ['ciento veinte', 120],
    ['doscientos cincuenta', 250],
    ['veinticinco', 25],
    ['point zero five', 0.05],
    ['oh point oh five', 0.05],
    ['three quarters', 0.75],
    ['two thirds', 2 / 3],
    ['three and 5/8', 3.625],
    ['two and a half', 2.5],
    ['24k', 24_000],
    ['1,250', 1250],
    ['1,250.5', 1250.5],
    ['1.250,5', 1250.5],
    ['12.5.', 12.5],
    ['.25', 0.25],
    ['007', 7],
  ])('%s is %d', (text, number) => {
    expect(figure(text).number).toBeCloseTo(number, 12);
  });

  it.each([
    ['half a mile', 0.5, 'mi'],
    ['a quarter of a mile', 0.25, 'mi'],
    ['2/10 of a mile', 0.2, 'mi'],
    ['.3 of a mile', 0.3, 'mi'],
    ['three tenths of a mile', 0.3, 'mi'],
    ['a mile and a half', 1.5, 'mi'],
    ['two miles and a half', 2.5, 'mi'],
    ['hour and a half', 1.5, 'h'],
    ['a ton and a half', 1.5, 'ton'],
    ['eighth of an inch', 0.125, 'in'],
    ['five eighths of an inch', 0.625, 'in'],
    ['a sixteenth of an inch', 0.0625, 'in'],
    ['media pulgada', 0.5, 'in'],
    ['tres cuartos de pulgada', 0.75, 'in'],
    ['1 hr 20', 80, 'min'],
    ['1 hr 20 min', 80, 'min'],
    ['2 mil libras', 2000, 'lb'],
    ['$85 a ton', 85, 'USD/ton'],
    ['$85/ton', 85, 'USD/ton'],
    ['85 dollars a ton', 85, 'USD/ton'],
    ['$32/hr', 32, 'USD/h'],
    ['$1,200.50', 1200.5, 'USD'],
    ['USD 45', 45, 'USD'],
    ['1 m 2', 1, 'm'],
  ])('%s', (text, number, unit) => {
    const [first] = figures(text);
    expect(first).toMatchObject({ unit });
    expect(first!.number).toBeCloseTo(number, 12);
  });

  // Slope as a share: 1/4 in in 12 in is 2.0833 %, 1/8 in half of that.
  it.each([
    ['1/4" per foot', 25 / 12],
    ['1/4 in/ft', 25 / 12],
    ['1/8 inch per ft', 25 / 24],
    ['20 mm/m', 2],
    ['2 percent', 2],
    ['2 por ciento', 2],
  ])('%s is %d %%', (text, number) => {
    expect(figure(text).unit).toBe('%');
    expect(figure(text).number).toBeCloseTo(number, 12);
  });
});

describe('negative, zero and absurd', () => {
  it.each([
    ['-5 ft', -5],
    ['at -5 F', -5],
    ['minus 5 degrees', -5],
    ['5 below', -5],
    ['0 ft', 0],
    ['5 - 3', 5],
  ])('%s', (text, number) => {
    expect(figures(text)[0]!.number).toBe(number);
  });

  it.each(['1e9 ft', '9'.repeat(400), '1.2.3', '1e3'])('%s is no figure', (text) => {
    expect(figures(text)).toEqual([]);
  });
});

describe('what stays unclear', () => {
  it.each([
    ['20 t', undefined, 't', 't'],
    ['20 t', 'metric', 't', undefined],
    ['20 t on 50 mm', undefined, 't', undefined],
    ['3.5 m', undefined, 'm', 'm'],
    ['3.5 m', 'metric', 'm', undefined],
    ['3.5 m x 40 mm', undefined, 'm', undefined],
    ['60 metros', undefined, 'm', undefined],
    ['50 degrees', undefined, 'degF', 'deg'],
    ['50 degrees', 'metric', 'degC', 'deg'],
    ['10 grados', undefined, 'degF', 'grados'],
    ['20 yards of premix', undefined, 'yd', 'yd'],
    ['2 tons per yard', undefined, 'ton/yd3', 'ton/yd'],
    ['.06 gal per yard', undefined, 'gal/yd2', 'gal/yd'],
    ['110 lb per inch', undefined, 'lb/yd2/in', 'lb/in'],
    ['3,5 m', undefined, 'm', 'm'],
    ['3,5', undefined, undefined, '3,5'],
    ['3,5', 'metric', undefined, undefined],
    ['0,4', undefined, undefined, undefined],
    ['11/2 in', undefined, 'in', '11/2'],
    ['2.4 t/m3', undefined, 't/m3', undefined],
  ] as const)('%s (%s)', (text, units, unit, unclear) => {
    const [first] = figures(text, units && { units });
    expect([first!.unit, first!.unclear]).toEqual([unit, unclear]);
  });
});

describe('one of a thing', () => {
  it.each([
    ['at an inch', 'at [1 in]'],
    ['a ton of mix', '[1 ton] of mix'],
    ['how much does a ton cover', 'how much does [1 ton] cover'],
    ['rain in an hr', 'rain in [1 h]'],
    ['one lift', '[1] lift'],
    ['one inch', '[1 in]'],
    ['how many loads an hour', 'how many loads an hour'],
    ['20 tons a mile', '[20 ton] a mile'],
    ['10 tons an hour', '[10 ton/h]'],
    ['150 pies a pulgada y media', '[150 ft] [1.5 in]'],
    ['toneladas: 20', '[20 t tonelada?]'],
    ['200 cars an hour', '[200] cars an hour'],
    ['2 lifts an inch each', '[2] lifts [1 in each] each'],
    ['60 x 3.5 at 0.3 l/m2', '[60] [3.5] at [0.3 L/m2]'],
    ['one 12 ft lane', 'one [12 ft] lane'],
    ['a few hundred feet', 'a few hundred feet'],
    ['a couple hundred feet', '[about 200 ft]'],
    ['165/110 = 1.5 inches', '[165] / [110] = [1.5 in]'],
    ['1) 12 ft wide', '<other 1> ) [12 ft] wide'],
  ])('%s', (text, want) => {
    expect(short(text)).toBe(want);
  });
});
