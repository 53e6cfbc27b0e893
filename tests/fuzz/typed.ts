import { readFileSync } from 'node:fs';
import fc from 'fast-check';

export const here = (path: string): string => readFileSync(new URL(`../../${path}`, import.meta.url), 'utf8');
const linesOf = (path: string): string[] => here(path).split('\n').filter(Boolean);

/** What people ask, and what they are not taken to ask. */
export const questions: readonly string[] = [
  ...linesOf('tests/corpus/questions.txt'),
  ...linesOf('tests/corpus/questions.jsonl').map((line) => (JSON.parse(line) as { ask: string }).ask),
  ...linesOf('tests/corpus/not-quantities.txt'),
];
export const hostile: readonly string[] = linesOf('tests/corpus/hostile.jsonl').map(
  (line) => JSON.parse(line) as string,
);

/** Pieces that make trouble for a reader: signs near figures, odd letters, names every object has, and figures past all bounds. */
export const odd = [
  ...[
    '½',
    '1⁄2',
    '′',
    '”',
    '×',
    '−',
    '\u00a0',
    '\u202e',
    '🚧',
    '\n',
    '\r\n',
    '\t',
    '\0',
    '\ud800',
    'ﬁ',
    'İ',
    'ß',
    '１２',
    '٣',
  ],
  ...[
    '12',
    '0',
    '-',
    '.',
    ',',
    '1e9',
    '1e308',
    '1e-308',
    '-0',
    '999999999999',
    '00012',
    '0x10',
    '1_000',
    '1/0',
    '0/0',
    '3-',
    "5'6",
  ],
  ...[
    '"',
    "'",
    '%',
    '#',
    '@',
    '$',
    '&',
    '/',
    '\\',
    '(',
    ')',
    '[',
    ']',
    '{',
    '}',
    '<',
    '>',
    '|',
    ';',
    ':',
    '=',
    '+',
    '*',
    '~',
    '^',
    '`',
    '?',
  ],
  ...[
    'ton',
    'tons',
    'in',
    'ft',
    ' x ',
    '1:1',
    'per',
    'sq yd',
    'gal',
    'mph',
    'mm',
    'deg F',
    '%',
    'ñ',
    'why ',
    'same but ',
    'is ',
    'NaN',
  ],
  ...[
    'Infinity',
    'null',
    'undefined',
    '__proto__',
    'constructor',
    'toString',
    'hasOwnProperty',
    ' and ',
    ' or ',
    ' not ',
    'patch 3',
    'half',
    'dozen',
  ],
];

/** A text with a few places of it replaced by trouble, pieces of it said twice, or two texts grown together. */
const edited = (texts: readonly string[]): fc.Arbitrary<string> =>
  fc
    .tuple(
      fc.constantFrom(...texts),
      fc.constantFrom(...texts),
      fc.nat({ max: 3 }),
      fc.array(fc.tuple(fc.nat({ max: 200 }), fc.nat({ max: 4 }), fc.constantFrom(...odd)), { maxLength: 6 }),
    )
    .map(([text, other, how, edits]) => {
      const start =
        how === 0
          ? text.slice(0, text.length / 2) + other.slice(other.length / 2)
          : how === 1
            ? `${text} ${other}`
            : text;
      return edits.reduce((now, [at, drop, put]) => {
        const place = now.length === 0 ? 0 : at % (now.length + 1);
        return now.slice(0, place) + put + now.slice(place + drop);
      }, start);
    });

const words = [...new Set(questions.join(' ').split(' '))];
const soup = fc
  .array(fc.oneof(fc.constantFrom(...words), fc.constantFrom(...odd), fc.nat({ max: 1e6 }).map(String)), {
    maxLength: 30,
  })
  .map((list) => list.join(' '));
const repeated = fc
  .tuple(fc.constantFrom(...odd, ...words.slice(0, 200)), fc.integer({ min: 2, max: 400 }))
  .map(([piece, times]) => piece.repeat(times).slice(0, 2000));

/** What may be typed: mostly near to what people type, seldom plain noise. */
export const typed: fc.Arbitrary<string> = fc.oneof(
  { weight: 8, arbitrary: edited(questions) },
  { weight: 3, arbitrary: soup },
  { weight: 1, arbitrary: repeated },
  { weight: 1, arbitrary: fc.string({ unit: 'binary', maxLength: 200 }) },
  { weight: 1, arbitrary: fc.constantFrom(...hostile) },
);
