import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { read } from '../../../src/calc/read/read.ts';
import type { Item } from '../../../src/calc/read/reading.ts';
import { units } from '../../../src/calc/units.ts';
import { corpus, corpusLines } from './reads.ts';

const texts = [...corpusLines('readings.jsonl').map((line) => line.text), ...corpus('not-quantities.txt')];

/** Pieces that numbers, units, names and trouble are made of. */
const pieces = [
  ...[
    '1',
    '12',
    '.5',
    '1/2',
    '3,5',
    '1,250',
    '½',
    '⁄',
    '²',
    '⁰',
    '-',
    '–',
    '+',
    '/',
    'x',
    '×',
    '*',
    ':',
    '.',
    ',',
    "'",
    '"',
    '”',
    '%',
    '#',
  ],
  ...[
    '$',
    '°',
    '(',
    ')',
    '~',
    '<',
    '>=',
    '\n',
    '\t',
    ' ',
    ' ',
    ' ',
    'ft',
    'in',
    'sy',
    'lb',
    'gal',
    'per',
    'a',
    'an',
    'one',
    'half',
    'and',
  ],
  ...[
    'to',
    'or',
    'by',
    'hundred',
    'mile',
    'ton',
    'of',
    'lane',
    'am',
    'US',
    'PG',
    'MP',
    'sta',
    'low',
    '40s',
    'below',
    'about',
    'no more than',
  ],
  ...[
    'each',
    'wide',
    'deep',
    'm',
    't',
    'T',
    'k',
    'y',
    'mil',
    'pulgada',
    'media',
    '🚧',
    'é',
    '\u0301',
    '\u00a0',
    '\u2009',
    '\u0000',
    '\ud800',
  ],
];

const text = fc.oneof(
  { weight: 4, arbitrary: fc.array(fc.constantFrom(...pieces), { maxLength: 30 }).map((list) => list.join('')) },
  { weight: 2, arbitrary: fc.array(fc.constantFrom(...pieces), { maxLength: 30 }).map((list) => list.join(' ')) },
  { weight: 1, arbitrary: fc.string({ unit: 'binary', maxLength: 60 }) },
  {
    weight: 3,
    arbitrary: fc
      .tuple(fc.constantFrom(...texts), fc.constantFrom(...texts), fc.nat(40), fc.nat(40), fc.constantFrom(...pieces))
      .map(([a, b, i, j, piece]) => a.slice(0, i) + piece + b.slice(j)),
  },
);

/** What is wrong with a reading, or undefined. */
function fault(typed: string, items: readonly Item[]): string | undefined {
  let end = 0;
  const covered = new Set<number>();
  for (const item of items) {
    const [from, to] = item.at;
    if (!(from >= end && to > from && to <= typed.length)) return `place ${from}-${to} after ${end}`;
    end = to;
    for (let i = from; i < to; i++) covered.add(i);
    if (item.kind !== 'figure') continue;
    const numbers = [item.number, item.low ?? 0, item.high ?? 0, ...(item.parts ?? [])];
    if (!numbers.every(Number.isFinite)) return `numbers ${numbers}`;
    if (item.low !== undefined && !(item.low < item.high!)) return `range ${item.low}..${item.high}`;
    if (item.unit !== undefined && !Object.hasOwn(units, item.unit)) return `unit ${item.unit}`;
  }
  const dropped =
    [...typed].length === 0 ? -1 : typed.split('').findIndex((c, i) => c >= '0' && c <= '9' && !covered.has(i));
  return dropped < 0 ? undefined : `digit ${typed[dropped]} at ${dropped} is dropped`;
}

describe('any text', () => {
  it('is read without a fault: places in order, numbers finite, no digit dropped, in under 20 ms', () => {
    fc.assert(
      fc.property(text, fc.constantFrom(undefined, { units: 'metric' as const }), (typed, options) => {
        const start = performance.now();
        let items = read(typed, options);
        // A pause of the machine is not the reader's: what was slow must be slow again.
        if (performance.now() - start > 20) {
          const again = performance.now();
          items = read(typed, options);
          expect(performance.now() - again, 'ms').toBeLessThan(20);
        }
        const wrong = fault(typed, items);
        if (wrong) throw new Error(wrong);
      }),
      { numRuns: 100_000 },
    );
  }, 120_000);

  it('reads the same each time', () => {
    fc.assert(
      fc.property(text, (typed) => {
        expect(read(typed)).toEqual(read(typed));
      }),
      { numRuns: 500 },
    );
  });

  it('finds faults when there are some', () => {
    expect(fault('12 ft', [])).toContain('dropped');
    expect(fault('12 ft', [{ kind: 'figure', number: Number.NaN, at: [0, 5] }])).toContain('NaN');
    expect(fault('12', [{ kind: 'word', text: '12', at: [1, 1] }])).toContain('place');
  });
});

describe('places', () => {
  it.each(corpusLines('readings.jsonl').map((line) => line.text))('%s: each figure stands where it says', (typed) => {
    for (const item of read(`so, ${typed}?`)) {
      const cut = `so, ${typed}?`.slice(...item.at);
      expect(cut.trim(), 'no blanks at either end').toBe(cut);
      if (item.kind === 'word' && /^[a-z]+$/.test(item.text)) expect(cut.toLowerCase()).toBe(item.text);
      if (
        item.kind === 'figure' &&
        Number.isInteger(item.number) &&
        !item.form &&
        item.low === undefined &&
        item.unit !== 'min'
      ) {
        const digits = cut.normalize('NFKC').replaceAll(',', '').replaceAll(' ', '');
        expect(digits).toContain(String(Math.abs(item.number)).replace(/0+$/, ''));
      }
    }
  });
});
