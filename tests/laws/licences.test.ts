import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { root } from './sources.ts';

interface Entry {
  readonly version?: string;
  readonly license?: string;
  readonly dev?: boolean;
}
const lock = JSON.parse(readFileSync(join(root, 'package-lock.json'), 'utf8')) as { packages: Record<string, Entry> };

/** Licences that let the program be handed on with nothing but their notice. */
const allowed = new Set(['MIT', 'ISC', 'BSD-2-Clause', 'BSD-3-Clause', '0BSD', 'Apache-2.0']);

/** What runs with the program: all that the lock holds for it, packages that tests and builds use left out. */
const shipped = Object.entries(lock.packages)
  .filter(([path, { dev }]) => path !== '' && !dev)
  .map(([path, { version, license }]) => ({ name: path.split('node_modules/').at(-1)!, version, license }));

test('every package that runs with the program has a licence that is allowed', () => {
  expect(shipped.length).toBeGreaterThan(8);
  expect(shipped.filter(({ license }) => !allowed.has(license ?? ''))).toEqual([]);
});

test('docs/licences.md lists them', () => {
  const listed = readFileSync(join(root, 'docs/licences.md'), 'utf8');
  const rows = shipped.map(({ name, license }) => `| ${name} | ${license} |`);
  expect(rows.filter((row) => !listed.includes(row))).toEqual([]);
});
