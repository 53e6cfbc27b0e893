import { describe, expect, test } from 'vitest';
import { usesOf } from './names.ts';
import { filesUnder, type SourceFile } from './sources.ts';
import { importsOf, parse, placeOf, walk } from './syntax.ts';

const clockNetworkAndDom = new Set([
  ...['Date', 'performance', 'setTimeout', 'setInterval', 'setImmediate', 'queueMicrotask', 'crypto'],
  ...[
    'fetch',
    'XMLHttpRequest',
    'WebSocket',
    'EventSource',
    'navigator',
    'localStorage',
    'sessionStorage',
    'indexedDB',
  ],
  ...['window', 'document', 'self', 'process', 'globalThis', 'require', 'eval', 'Function', 'console'],
]);

/** What may be imported besides our own files: packages that are pure themselves. */
const purePackages = new Set(['minisearch', 'papaparse', 'marked', 'zod', 'zod/mini', 'hono/jsx', 'hono/html']);

/** Everything in a file that could make the same request give another reply. */
function impuritiesIn(file: SourceFile): string[] {
  const imports = importsOf(file).filter((specifier) => !specifier.startsWith('.') && !purePackages.has(specifier));
  return [
    ...imports.map((specifier) => `${file.path} imports ${specifier}`),
    ...usesOf(file, clockNetworkAndDom),
    ...randomOrLocalIn(file),
  ];
}

/** Chance, and words that come out in the language or the time zone of the machine. */
function randomOrLocalIn(file: SourceFile): string[] {
  const places: string[] = [];
  walk(parse(file), (node, parent, field) => {
    if (node.type !== 'Identifier' || field !== 'property' || parent?.type !== 'MemberExpression') return;
    const name = node.name as string;
    if (name === 'random' || name.startsWith('toLocale') || name === 'localeCompare')
      places.push(`${placeOf(file, node)} ${name}`);
  });
  return places;
}

describe('calc, rules and ask have no clock, chance, network, page or machine', () => {
  test.each(['calc', 'rules', 'ask'])('%s', (folder) => {
    const files = filesUnder(`src/${folder}`, ['.ts', '.tsx']);
    expect(files.length).toBeGreaterThan(0);
    expect(files.flatMap(impuritiesIn)).toEqual([]);
  });

  test.each([
    `import { readFileSync } from 'node:fs';`,
    `import { readFileSync } from 'fs';`,
    `import { Hono } from 'hono';`,
    'export const now = () => Date.now();',
    'export const now = new Date();',
    'export const dice = Math.random();',
    'export const all = { ...globalThis };',
    'export const answer = fetch;',
    'export const home = process.env.HOME;',
    'export const text = (1.5).toLocaleString();',
    `export const order = (a: string, b: string) => a.localeCompare(b);`,
    'export const shorthand = { window };',
    'export const computed = {}[document];',
  ])('seen: %s', (text) => {
    expect(impuritiesIn({ path: 'src/calc/a.ts', text })).not.toEqual([]);
  });

  test.each([
    '// Date, Math.random and fetch in a comment',
    `export const text = 'the window of the document';`,
    'export const place = (source: { document: string }) => source.document;',
    'export const place = ({ document }: { document: string }) => document;',
    `export const source = { document: 'a manual', process: 'milling' };`,
  ])('no fault: %s', (text) => {
    expect(impuritiesIn({ path: 'src/calc/a.ts', text })).toEqual([]);
  });
});
