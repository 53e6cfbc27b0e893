import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { read } from '../../../src/calc/read/read.ts';
import { figure, figures } from './reads.ts';

const withoutPlaces = (text: string) => read(text).map(({ at: _, ...item }) => item);

/** The fractions of the Unicode block, with the value each is named for. */
const glyphs: readonly (readonly [string, number, number])[] = [
  ['¼', 1, 4],
  ['½', 1, 2],
  ['¾', 3, 4],
  ['⅓', 1, 3],
  ['⅔', 2, 3],
  ['⅕', 1, 5],
  ['⅖', 2, 5],
  ['⅗', 3, 5],
  ['⅘', 4, 5],
  ['⅙', 1, 6],
  ['⅚', 5, 6],
  ['⅛', 1, 8],
  ['⅜', 3, 8],
  ['⅝', 5, 8],
  ['⅞', 7, 8],
  ['⅒', 1, 10],
];

describe('fractions', () => {
  it.each(glyphs)('%s is %i/%i, alone and after a whole number', (glyph, over, under) => {
    expect(figure(`${glyph}"`).number).toBe(over / under);
    for (const text of [`1${glyph}"`, `1 ${glyph}"`, `1-${glyph}"`]) expect(figure(text).number).toBe(1 + over / under);
    expect(withoutPlaces(`${glyph} in deep`)).toEqual(withoutPlaces(`${over}/${under} in deep`));
  });

  it.each([
    ['1⁄2 in', 0.5],
    ['¹⁄₂ in', 0.5],
    ['1¹⁄₂ in', 1.5],
    ['³⁄₄ in', 0.75],
    ['⅟2 in', 0.5],
    ['１½ in', 1.5],
  ])('%s', (text, number) => {
    expect(figure(text)).toMatchObject({ number, unit: 'in' });
  });
});

describe('characters that mean the same', () => {
  it.each([
    ['12’ x 150’ x 2”', `12' x 150' x 2"`],
    ['12′ × 150′ × 2″', `12' x 150' x 2"`],
    ["12' ✕ 150' ✖ 2''", `12' x 150' x 2"`],
    ['12` x 150´', "12' x 150'"],
    ['2–3 inches', '2-3 inches'],
    ['2‑3 inches', '2-3 inches'],
    ['2—3 inches', '2-3 inches'],
    ['−5 °C', '-5 °C'],
    ['50⁰F', '50°F'],
    ['50ºF', '50°F'],
    ['50˚F', '50°F'],
    ['５０％', '50%'],
    ['１２ ｆｔ', '12 ft'],
    ['12 ft wide', '12 ft wide'],
    ['167㎡', '167 m2'],
    ['20 yd³', '20 yd3'],
    ['≤ 2 in', '<= 2 in'],
    ['≥ 2 in', '>= 2 in'],
    ['≈ 2 in', '~ 2 in'],
    ['±1/4"', '+/-1/4"'],
    ['don’t lay 2 in', "don't lay 2 in"],
    ['15 metros cu\u0301bicos', '15 metros cubicos'],
    ['2\u200b in', '2 in'],
    ['110 lb/yd²·in', '110 lb/yd2-in'],
  ])('%s reads as %s', (typed, plain) => {
    expect(withoutPlaces(typed)).toEqual(withoutPlaces(plain));
  });

  it('a thin space groups thousands', () => {
    expect(figure('1\u2009250 ft')).toMatchObject({ number: 1250, unit: 'ft' });
    expect(figure('1\u202f250\u202fft')).toMatchObject({ number: 1250, unit: 'ft' });
    expect(figures('12\u200950 ft').map((f) => f.number)).toEqual([12, 50]);
  });

  it('a glyph after a point does not run into the number before it', () => {
    expect(figures('1,250.½').map((f) => f.number)).toEqual([1250.5]);
    expect(figures('½3,5').map((f) => f.number)).toEqual([0.5, 3.5]);
  });

  it('a raised digit is never glued to the number before it', () => {
    expect(figures('10⁵').map((f) => f.number)).toEqual([10, 5]);
    expect(figures('10⁰5').map((f) => f.number)).toEqual([10, 5]);
  });
});

describe('places', () => {
  it('are those of the text as sent', () => {
    const text = '🚧 lay 1 ½” on 12′ × 150′ at 50⁰F — ok?';
    const cut = figures(text).map((f) => text.slice(...f.at));
    expect(cut).toEqual(['1 ½”', '12′', '150′', '50⁰F']);
    const words = read(text).flatMap((item) => (item.kind === 'word' ? [text.slice(...item.at)] : []));
    expect(words).toEqual(['lay', 'on', 'at', 'ok']);
  });

  it('hold the digits, whatever stands before', () => {
    const lead = fc.array(fc.constantFrom('½ ', '🚧', 'é', ' ', '\u200b', '—', 'mix ', '㎡ ', 'x', '≤ '), {
      maxLength: 8,
    });
    fc.assert(
      fc.property(lead, fc.integer({ min: 100, max: 900 }), (before, n) => {
        const text = `${before.join('')}\n${n} tons`;
        const last = figures(text).at(-1)!;
        expect(text.slice(...last.at)).toBe(`${n} tons`);
      }),
    );
  });
});
