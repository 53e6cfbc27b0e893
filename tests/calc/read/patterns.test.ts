import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

const folder = new URL('../../../src/calc/read/', import.meta.url);
const files = readdirSync(folder).filter((name) => name.endsWith('.ts'));

/** The regular expressions in a source: literals (a slash where a value may begin) and anything made by name. */
function patterns(source: string): string[] {
  const code = source
    .replace(/\/\*[\s\S]*?\*\//g, '')
    .replace(/'(?:\\.|[^'\\\n])*'|"(?:\\.|[^"\\\n])*"|`(?:\\.|[^`\\])*`/g, "''")
    .replace(/\/\/.*/g, '');
  const literals = [
    ...code.matchAll(/(?:^|[=(,:;!&|?{}[\n]|return)\s*(\/(?![/*])(?:\\.|\[(?:\\.|[^\]\\\n])*\]|[^/\\\n])+\/[a-z]*)/g),
  ].map((m) => m[1]!);
  return [...literals, ...(code.match(/RegExp\b.*/g) ?? [])];
}

/** Unbounded work: a repeated group that repeats inside, or two unbounded runs side by side, or a pattern made at run time. */
function isUnbounded(pattern: string): boolean {
  const nested = /\((?:[^()\\]|\\.)*[+*}](?:[^()\\]|\\.)*\)[+*{]/.test(pattern);
  const twins = /[+*]\??(?:\\.|\[[^\]]*\]|\.)[+*]/.test(pattern);
  return nested || twins || pattern.startsWith('RegExp');
}

describe('patterns in the reader', () => {
  it.each(files)('%s holds none that could run away', (name) => {
    expect(patterns(readFileSync(new URL(name, folder), 'utf8')).filter(isUnbounded)).toEqual([]);
  });

  it('are all looked at', () => {
    expect(files.length).toBeGreaterThan(20);
  });

  it.each([
    'const a = /(a+)+$/;',
    'x.match(/(\\d*\\s*)*x/)',
    'return /\\s+\\s+/;',
    'new RegExp(text)',
    'f(/(a|b+){2,}/g)',
  ])('%s would be caught', (source) => {
    expect(patterns(source).filter(isUnbounded).length).toBe(1);
  });

  it.each(['const a = b / c / d;', "const s = '/(a+)+/';", '/** (a+)+ */ const x = 1;', 'const p = /^\\d{1,3}$/;'])(
    '%s would not',
    (source) => {
      expect(patterns(source).filter(isUnbounded)).toEqual([]);
    },
  );
});
