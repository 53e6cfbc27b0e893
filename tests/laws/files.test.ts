import { describe, expect, test } from 'vitest';
import { allFiles, filesUnder, type SourceFile } from './sources.ts';
import { parse, placeOf, walk } from './syntax.ts';

const longest = 300;
const code = ['src', 'tests', 'scripts'].flatMap((folder) => filesUnder(folder, ['.ts', '.tsx', '.mjs']));

/** Written in halves, so that this file does not hold them itself. */
const forbidden = [
  ['tran', 'script'],
  ['seed ', 'document'],
  ['steering ', 'repo'],
  ['before', '-stop'],
  ['/work', '/'],
  ['/farm', '/'],
].map((halves) => halves.join(''));

function lineCount(text: string): number {
  return text.split('\n').length - (text.endsWith('\n') ? 1 : 0);
}

/** Forbidden words in a file; a path only where it begins, not in the middle of another one. */
function forbiddenIn({ path, text }: SourceFile): string[] {
  const name = `${path}\n${text}`.toLowerCase();
  return forbidden
    .filter((word) => {
      for (let at = name.indexOf(word); at >= 0; at = name.indexOf(word, at + 1)) {
        if (!word.startsWith('/') || at === 0 || !/[\w.-]/.test(name[at - 1]!)) return true;
      }
      return false;
    })
    .map((word) => `${path}: ${word}`);
}

/**
 * Places where the compiler is told to look away: a type of any, or a comment that silences it. A test may expect an
 * error: that is how it shows that something does not compile.
 */
function blindSpotsIn(file: SourceFile): string[] {
  const places: string[] = [];
  walk(parse(file), (node) => {
    if (node.type === 'TSAnyKeyword') places.push(placeOf(file, node));
  });
  const silencing = file.path.startsWith('tests/') ? /@ts-(ignore|nocheck)/ : /@ts-(ignore|nocheck|expect-error)/;
  const silenced = silencing.exec(file.text);
  if (silenced) places.push(`${file.path}: ${silenced[0]}`);
  return places;
}

describe('files are small', () => {
  test(`no file of code has more than ${longest} lines`, () => {
    const long = code
      .filter(({ path }) => !path.endsWith('.generated.ts'))
      .filter(({ text }) => lineCount(text) > longest)
      .map(({ path, text }) => `${path}: ${lineCount(text)} lines`);
    expect(long).toEqual([]);
  });

  test('lines are counted as an editor does', () => {
    expect([lineCount('a'), lineCount('a\n'), lineCount('a\nb\n')]).toEqual([1, 1, 2]);
  });
});

describe('the project stands alone', () => {
  test('no file speaks of how or where it was written', () => {
    const files = allFiles();
    expect(files.length).toBeGreaterThan(20);
    expect(files.flatMap(forbiddenIn)).toEqual([]);
  });

  test('such words are seen, and a like path is not taken for one', () => {
    for (const word of forbidden) expect(forbiddenIn({ path: 'a.md', text: `see ${word}x` })).toHaveLength(1);
    const like = (start: string, end: string): string => [start, 'work', end].join('/');
    const text = `${like('https://example.org', '')} and ${like('src', 'zone.ts')}`;
    expect(forbiddenIn({ path: 'a.md', text })).toEqual([]);
  });
});

describe('types hold everywhere', () => {
  test('no type of any, and no comment that silences the compiler', () => {
    const typed = code.filter(({ path }) => path.endsWith('.ts') || path.endsWith('.tsx'));
    // This file holds the words it looks for.
    expect(typed.filter(({ path }) => path !== 'tests/laws/files.test.ts').flatMap(blindSpotsIn)).toEqual([]);
  });

  test.each(['let a: any;', 'const b = 1 as any;', 'type C = Array<any>;', '// @ts-expect-error\nlet d: string = 1;'])(
    'seen: %s',
    (text) => {
      expect(blindSpotsIn({ path: 'a.ts', text })).toHaveLength(1);
    },
  );

  test('the word in a sentence is no type', () => {
    expect(blindSpotsIn({ path: 'a.ts', text: `// any\nconst any = 'any';` })).toEqual([]);
  });
});
