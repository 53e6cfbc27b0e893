import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { figure, figures, short } from './reads.ts';

describe('ranges, ends and guesses carry through', () => {
  it.each([
    ['2 to 3 in', '[2..3 in]'],
    ['2" to 3"', '[2..3 in]'],
    ['2" - 3', '[2..3 in]'],
    ['10 -12 ft', '[10..12 ft]'],
    ['2-to-3-inch', '[2..3 in]'],
    ['between 275 and 300 F', '[275..300 degF]'],
    ['1-1/2 - 2"', '[1.5..2 in]'],
    ['1 to 1-1/2 inches', '[1..1.5 in]'],
    ['3/4"-1"', '[0.75..1 in]'],
    ['an inch or two', '[1..2 in]'],
    ['half to three quarters of an inch', '[0.5..0.75 in]'],
    ['-10 to 5 C', '[-10..5 degC]'],
    ['between 7 and 9 am', 'between <clock 7> and <clock 9 am>'],
    ['one or two lifts', '[1..2] lifts'],
    ['5 to 10 cm', '[5..10 cm]'],
    ['5 a 10 cm', '[5..10 cm]'],
    ['entre 2 y 3 pulgadas', '[2..3 in]'],
    ["6 devices 10'-20' apart", '[6] devices [10..20 ft apart] apart'],
    ['300 to 200 ft', '[300] to [200 ft]'],
    ['2 in to 3 patches', '[2 in] to [3] patches'],
    ['5 or 50 ft', '[5] or [50 ft]'],
    ['< 2"', '[under 2 in]'],
    ['<=2"', '[at-most 2 in]'],
    ['≥ 2 in', '[at-least 2 in]'],
    ['no more than 2 in', '[at-most 2 in]'],
    ['up to 2 in', '[at-most 2 in]'],
    ['max 2 in', '[at-most 2 in]'],
    ['2 in max', '[at-most 2 in]'],
    ['2 in or less', '[at-most 2 in]'],
    ['50 F or above', '[at-least 50 degF]'],
    ['at least 50 F', '[at-least 50 degF]'],
    ['al menos 50 F', '[at-least 50 degF]'],
    ['under 2 in', '[under 2 in]'],
    ['less than 2 to 3 in', '[under 2..3 in]'],
    ['over 3 in', '[over 3 in]'],
    ['about 2 in', '[about 2 in]'],
    ['2 in or so', '[about 2 in]'],
    ['2-ish inches', '[about 2 in]'],
    ['roughly 2 to 3 in', '[about 2..3 in]'],
    ['a couple of hours', '[about 2 h]'],
    ['38 and rising', '[38 degF deg? rising]'],
    ['60 F and falling', '[60 degF falling]'],
  ])('%s', (text, want) => {
    expect(short(text)).toBe(want);
  });

  it.each([
    ['what about 14 ft wide?', 'what about [14 ft] wide ?'],
    ['how about 2 in', 'how about [2 in]'],
    ['20 tons over 2,400 sq ft', '[20 ton] over [2400 ft2]'],
    ['spread it over 300 ft', 'spread it over [300 ft]'],
    ['12 ft max lift', '[12 ft] max lift'],
    ['12 ft and rising', '[12 ft] and rising'],
  ])('%s hedges nothing', (text, want) => {
    expect(short(text)).toBe(want);
  });

  it('a range in is a range out, for any two numbers', () => {
    const ends = fc.tuple(fc.integer({ min: 1, max: 500 }), fc.integer({ min: 1, max: 400 }));
    fc.assert(
      fc.property(
        ends,
        fc.constantFrom('-', ' - ', ' to ', '–', ' thru '),
        fc.constantFrom('ft', 'in', 'mph', '%'),
        ([low, more], join, unit) => {
          const read = figure(`${low}${join}${low + more} ${unit}`);
          expect(read).toMatchObject({ low, high: low + more, number: low + more / 2, unit });
        },
      ),
    );
  });
});

describe('ratios, spans and manner', () => {
  it.each([
    ['1:1', '[1:1]'],
    ['6:1 foreslope', '[6:1] foreslope'],
    ['50/50', '[50:50]'],
    ['60/40', '[60:40]'],
    ['fifty-fifty', '[50:50]'],
    ['cut one to one', 'cut [1:1]'],
    ['uno a uno', '[1:1]'],
    ['dilute 1 to 3', 'dilute [1:3]'],
    ['3 to 1 slope', '[3:1] slope'],
    ['half and half', '[1:1]'],
    ['1.25 to 1', '[1.25:1]'],
    ['1:30', '[1:30]'],
    ['1 to 3 lifts', '[1..3] lifts'],
    ['12+50 to 14+00', '[150 ft]'],
    ['sta 10+00 thru sta 35+50', '[2550 ft]'],
    ['14+00 - 12+50', '[150 ft]'],
    ['1+080 to 1+200', '[120 m]'],
    ['MP 12.3 to 12.8', '[0.5 mi]'],
    ['mile marker 3 to 5', '[2 mi]'],
    ['cones every 20 feet', 'cones every [20 ft apart]'],
    ['cada 20 pies', 'cada [20 ft apart]'],
    ['10x20 ft each', '[10 ft each] [20 ft each] each'],
    ['12 miles each way', '[12 mi] each way'],
  ])('%s', (text, want) => {
    expect(short(text)).toBe(want);
  });

  it('a ratio of nothing is none', () => {
    for (const text of ['1:0', '0:0', '100/0', '1 to 0']) {
      for (const f of figures(text)) expect(Number.isFinite(f.number), text).toBe(true);
    }
  });
});
