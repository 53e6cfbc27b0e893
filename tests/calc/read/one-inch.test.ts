import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { figures, short } from './reads.ts';

const joiner = fc.constantFrom(' x ', ' by ', ' * ', 'x');
const side = fc.integer({ min: 7, max: 900 });
const deep = fc.constantFrom(' deep', ' thick', ' lift', ' overlay');

/** "An inch and a half" and "inch thick" as spoken, and as written: 1 1/2 in and 1 in. */
const half = fc.constantFrom('inch and a half', 'inch n a half', "inch 'n' a half", 'inch & a half', 'inch and 1/2');

describe('an inch that is one inch', () => {
  it('is the depth after two bare sides, and leaves them bare', () => {
    fc.assert(
      fc.property(side, side, joiner, deep, (a, b, x, word) => {
        expect(figures(`${a}${x}${b} inch${word}`).map((f) => [f.number, f.unit])).toEqual([
          [a, undefined],
          [b, undefined],
          [1, 'in'],
        ]);
      }),
    );
  });

  it('and a half is the depth too, said any way', () => {
    fc.assert(
      fc.property(side, side, joiner, half, fc.constantFrom('', ' deep', ' tons', ' each'), (a, b, x, said, end) => {
        expect(figures(`${a}${x}${b} ${said}${end}`).map((f) => [f.number, f.unit])).toEqual([
          [a, undefined],
          [b, undefined],
          [1.5, 'in'],
        ]);
      }),
    );
  });

  it('is a unit of the number before it everywhere else', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 99 }), deep, (n, word) => {
        expect(figures(`${n} inch${word}`).map((f) => [f.number, f.unit])).toEqual([[n, 'in']]);
        expect(figures(`300 ft x 12 ft x ${n} inch${word}`).at(-1)).toMatchObject({ number: n, unit: 'in' });
      }),
    );
  });
});

describe('a half that completes a measure', () => {
  it.each([
    ['12 wide 450 long inch and a half tons', '[12] wide [450] long [1.5 in] tons'],
    ['inch and a half gallons', '[1.5 in] gallons'],
    ['inch and a quarter ton', '[1.25 in] ton'],
    ['lifts of 1 inch and 3/4 inch', 'lifts of [1 in] and [0.75 in]'],
    ['between an inch and a half and 2 inches', '[1.5..2 in]'],
    ['12 ft and a half mile', '[12 ft] and [0.5 mi]'],
    ['2" and a half load', '[2 in] and a half load'],
  ])('%s', (text, want) => {
    expect(short(text)).toBe(want);
  });
});

describe('a choice of counts', () => {
  it.each([
    ['one lift or two', '[1] lift or two'],
    ['2 passes or 3?', '[2] passes or 3 ?'],
    ['one lift or two lifts', '[1] lift or two lifts'],
    ['one lane or two', 'one-lane or two'],
    ['a load or two left', 'a load or two left'],
    ['two or three lifts', '[2..3] lifts'],
    ['1 lift or 2 inches', '[1] lift or [2 in]'],
    ['2 loads or 3 trucks', '[2] loads or [3] trucks'],
    ['12 wide or 14', '[12] wide or [14]'],
  ])('%s', (text, want) => {
    expect(short(text)).toBe(want);
  });
});
