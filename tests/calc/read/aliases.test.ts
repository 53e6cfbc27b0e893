import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { aliases } from './alias-words.ts';
import { figure } from './reads.ts';

/** Numbers as typed, with what they are. Above one, so that no alias turns into the name of a decade or a mixed number. */
const numbers = fc.oneof(
  fc.integer({ min: 2, max: 999 }).map((n) => [String(n), n] as const),
  fc.integer({ min: 1, max: 99 }).map((n) => [`${n}.25`, n + 0.25] as const),
  fc.integer({ min: 1, max: 9 }).map((n) => [`${n},500`, n * 1000 + 500] as const),
  fc.integer({ min: 1, max: 9 }).map((n) => [`${n} 1/2`, n + 0.5] as const),
  fc.integer({ min: 1, max: 9 }).map((n) => [`${n}½`, n + 0.5] as const),
  fc.constantFrom(['.25', 0.25] as const, ['3/4', 0.75] as const, ['¾', 0.75] as const),
);

const cases = {
  'as written': (word: string) => word,
  upper: (word: string) => word.toUpperCase(),
  lower: (word: string) => word.toLowerCase(),
  title: (word: string) => word.replace(word[0]!, word[0]!.toUpperCase()),
};

/** A capital M stands for many things, and F.T. for none: case changes nothing for a whole word or an abbreviation. */
const typed = aliases.flatMap(({ unit, unclear, words, marks, exact }) => [
  ...(words?.split('|') ?? []).flatMap((word) =>
    Object.entries(cases).map(([name, change]) => ({
      unit,
      unclear,
      name,
      alias: change(word),
      glue: !/^[°º]/.test(word),
    })),
  ),
  ...[...(marks?.split('|') ?? []), ...(exact?.split('|') ?? [])].map((alias) => ({
    unit,
    unclear,
    name: 'exact',
    alias,
    glue: true,
  })),
]);

describe('every alias, in every case, glued and spaced', () => {
  it.each(typed.map((one) => [one.alias, one.unit, one] as const))(
    '%s is %s',
    (alias, _unit, { unit, unclear, glue }) => {
      fc.assert(
        fc.property(numbers, fc.constantFrom(' ', '\u00a0', '\u2009', ...(glue ? [''] : [])), ([text, value], gap) => {
          const read = figure(`${text}${gap}${alias}`);
          expect([read.number, read.unit, read.unclear]).toEqual([value, unit, unclear]);
        }),
        { numRuns: 20 },
      );
    },
  );
});

describe('letters that count only in one case', () => {
  it.each([
    ['20 T', 'ton', undefined],
    ['20 t', 't', 't'],
    ['20 Mg', 't', undefined],
    ['20 m', 'm', 'm'],
  ])('%s', (text, unit, unclear) => {
    const read = figure(text);
    expect([read.number, read.unit, read.unclear]).toEqual([20, unit, unclear]);
  });

  it.each(['20 M', '20 G', '20 W'])('%s has no unit: the letter can mean several', (text) => {
    expect(figure(text).unit).toBeUndefined();
  });
});

describe('a hyphen joins a number to its unit', () => {
  it.each([
    ['12-foot lane', 12, 'ft'],
    ['12-ft lane', 12, 'ft'],
    ['3-inch lift', 3, 'in'],
    ['3-in. lift', 3, 'in'],
    ['1-1/2-inch lift', 1.5, 'in'],
    ['a 15-ton load', 15, 'ton'],
    ['half-inch mix', 0.5, 'in'],
    ['three-quarter-inch stone', 0.75, 'in'],
    ['2,000-gallon tank', 2000, 'gal'],
    ['100-square/yard test strip', 100, 'yd2'],
  ])('%s', (text, number, unit) => {
    const read = figure(text);
    expect([read.number, read.unit]).toEqual([number, unit]);
  });
});
