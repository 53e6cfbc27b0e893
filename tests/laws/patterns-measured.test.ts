import { expect, test } from 'vitest';
import { filesUnder } from './sources.ts';
import { parse, placeOf, walk } from './syntax.ts';

/**
 * Every pattern of the program is held against long texts made of what it looks for, and of what just misses it: the texts
 * that make a pattern try all ways to share them out. Short texts show one that grows with the cube or worse, long ones the square.
 */
interface Pattern {
  readonly place: string;
  readonly source: string;
  readonly flags: string;
}

const patterns = new Map<string, Pattern>();
for (const file of filesUnder('src', ['.ts', '.tsx']))
  walk(parse(file), (node) => {
    const { regex } = node as { regex?: { pattern: string; flags: string } };
    if (node.type !== 'Literal' || !regex) return;
    const key = `${regex.pattern}/${regex.flags}`;
    if (!patterns.has(key))
      patterns.set(key, { place: placeOf(file, node), source: regex.pattern, flags: regex.flags });
  });

/** As long as a question may be, and as a cell of a pasted list, which only the job book reads. */
const lengths = (place: string): readonly (readonly [letters: number, mostMs: number])[] =>
  place.startsWith('src/ask/book/') || place.includes('wording/book-')
    ? [
        [300, 15],
        [20_000, 150],
      ]
    : [
        [300, 15],
        [2000, 40],
      ];

/** Patterns that are run on short texts alone, by a part of them. */
const short: readonly (readonly [part: string, why: string])[] = [
  ['\\B(?=(\\d{3})+$)', 'a count of ours, to get a mark between its thousands'],
  ['(?:^|\\s)(?:\\d{1,2}|a|an|one|two|three|four|five|six)|', 'the 120 letters before a machine'],
];

/** Signs that a pattern names, and one of each kind that its classes do: the first of them are enough. */
function signsOf(source: string): string[] {
  const classes: readonly (readonly [RegExp, string])[] = [
    [/\\s/, ' \t'],
    [/\\d|0-9/, '0'],
    [/\\w|a-z|\\p\{L/, 'a'],
    [/A-Z/, 'A'],
  ];
  const found = classes.flatMap(([says, signs]) => (says.test(source) ? [...signs] : []));
  const named = source.replace(/\\(?:[pP]\{[^}]*\}|u\{[^}]*\}|[a-zA-Z])/g, '').replace(/[\\?*+|^$]/g, '');
  return [...new Set([...found, ...named, ' ', '.', '\n'])].slice(0, 12);
}

const ending = '\u0001';

/** The texts of one length: each sign over and over, each two by turns, and a run of one with the other in its middle. */
function* textsFor(signs: readonly string[], length: number): Generator<string> {
  for (const a of signs)
    for (const b of signs) {
      if (a === b) {
        yield a.repeat(length);
        yield a.repeat(length) + ending;
      } else {
        yield (a + b).repeat(length / 2) + ending;
        yield a.repeat(length / 2) + b + a.repeat(length / 2) + ending;
        yield b + a.repeat(length) + ending;
      }
    }
}

/** Milliseconds, the least of a few tries: a busy machine stalls any one of them. */
function taken({ source, flags }: Pattern, text: string, most: number, tries = 12): number {
  const pattern = new RegExp(source, flags);
  let least = Number.POSITIVE_INFINITY;
  for (let tried = 0; tried < tries && least > most; tried++) {
    const start = performance.now();
    if (flags.includes('g')) text.replace(pattern, '');
    else pattern.test(text);
    least = Math.min(least, performance.now() - start);
  }
  return least;
}

test('no pattern takes more than a steady time for each letter', { timeout: 300_000 }, () => {
  expect(patterns.size).toBeGreaterThan(150);
  const slow: string[] = [];
  for (const pattern of patterns.values()) {
    if (short.some(([part]) => pattern.source.includes(part))) continue;
    const signs = signsOf(pattern.source);
    each: for (const [length, most] of lengths(pattern.place))
      for (const text of textsFor(signs, length)) {
        const ms = taken(pattern, text, most);
        if (ms <= most) continue;
        slow.push(
          `${pattern.place} /${pattern.source.slice(0, 80)}/ ${length} letters ${JSON.stringify(text.slice(0, 12))}: ${ms.toFixed(1)} ms`,
        );
        break each;
      }
  }
  expect(slow).toEqual([]);
});

test.each([
  ['(a+)+$', 'a', 22],
  ['^\\s*[\\d., ]+\\s*$', ' ', 500],
  ['(?:a|a)*b', 'a', 22],
])('a pattern of the kind %s is caught', (source, sign, length) => {
  expect(taken({ place: '', source, flags: '' }, sign.repeat(length) + ending, 15, 1)).toBeGreaterThan(15);
});
