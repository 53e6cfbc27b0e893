import { expect, test } from 'vitest';
import { filesUnder, type SourceFile } from './sources.ts';
import { parse, placeOf, walk } from './syntax.ts';

/**
 * What a person types is run through these patterns, so none may take more than a steady time for each letter. Looked for is a
 * repetition inside a repetition; two branches of one repeated group that match the same text are not.
 */
const files = filesUnder('src/calc', ['.ts', '.tsx']).concat(filesUnder('src/ask', ['.ts', '.tsx']));

/** Most rounds of an outer repetition that may hold another one: the ways to share the text out stay few. */
const fewRounds = 8;

/** Patterns that hold a repetition in a repetition without harm, by the file, each with its reason; the list may only get shorter. */
const harmless = new Map([
  [
    'src/calc/survey/table.ts',
    'each round begins with a separator that no round may hold, so there is one way to share the text out',
  ],
]);

interface Pattern {
  readonly place: string;
  readonly path: string;
  /** Nothing when the pattern is made at run time. */
  readonly source?: string;
}

function patternsIn(file: SourceFile): Pattern[] {
  const found: Pattern[] = [];
  walk(parse(file), (node) => {
    const { regex, callee } = node as { regex?: { pattern: string }; callee?: { name?: string } };
    const at = { place: placeOf(file, node), path: file.path };
    if (node.type === 'Literal' && regex) found.push({ ...at, source: regex.pattern });
    else if (callee?.name === 'RegExp') found.push(at);
  });
  return found;
}

/** Most rounds of the repetition written at a place in a pattern, and how long it is written; 1 round when there is none. */
function repetitionAt(source: string, at: number): { least: number; most: number; length: number } {
  const [written, sign, from, comma, to] = /^(?:([*+?])|\{(\d+)(,?)(\d*)\})\??/.exec(source.slice(at)) ?? [''];
  if (!written) return { least: 1, most: 1, length: 0 };
  if (sign)
    return { least: sign === '+' ? 1 : 0, most: sign === '?' ? 1 : Number.POSITIVE_INFINITY, length: written.length };
  const least = Number(from);
  const most = to ? Number(to) : comma ? Number.POSITIVE_INFINITY : least;
  return { least, most, length: written.length };
}

/** Whether a group that is repeated many times holds a repetition whose length is not settled. */
function isNested(source: string): boolean {
  const open: boolean[] = [false];
  for (let at = 0; at < source.length; ) {
    const char = source[at]!;
    let inner = false;
    if (char === '(') {
      open.push(false);
      at += /^\((?:\?(?:[:=!]|<[=!]|<[^>]{1,40}>))?/.exec(source.slice(at))![0].length;
      continue;
    }
    if (char === ')') inner = open.pop()!;
    const atom = /^(?:\\(?:[pP]\{[^}]*\}|u\{[^}]*\}|.)|\[(?:\\.|[^\]\\])*\]|[\s\S])/.exec(source.slice(at))![0];
    at += atom.length;
    const { least, most, length } = repetitionAt(source, at);
    at += length;
    if (inner && most > fewRounds) return true;
    if (inner || (most > 1 && most !== least)) open[open.length - 1] = true;
  }
  return false;
}

const patterns = files.flatMap(patternsIn);

test('no pattern of the reader or of the answers repeats inside a repetition, but for those listed', () => {
  const nested = patterns.filter(({ source }) => source !== undefined && isNested(source));
  expect(patterns.length).toBeGreaterThan(100);
  expect(nested.filter(({ path }) => !harmless.has(path))).toEqual([]);
  expect(nested.map(({ path }) => path)).toEqual([...harmless.keys()]);
});

test('no pattern is made at run time', () => {
  expect(patterns.filter(({ source }) => source === undefined)).toEqual([]);
});

test.each(['(a+)+$', '(?:\\d*\\s*)*x', '(?<n>a|b{1,3}){2,}', '((a{2,})b){9}', '(?:[)]+)*'])(
  '%s is caught',
  (source) => {
    expect(isNested(source)).toBe(true);
  },
);

test.each(['(?:,\\d{3})+', '^\\d{1,3}$', '[(+)]*', '\\(a+\\)+', '(?:[ -][a-z]+){0,3}', '(?=a+)b', '\\p{L}+'])(
  '%s is not',
  (source) => {
    expect(isNested(source)).toBe(false);
  },
);
