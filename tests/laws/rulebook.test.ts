import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { renderRulebook, rulebookPath } from '../../scripts/rulebook.mjs';
import * as index from '../../src/rules/index.generated.ts';
import { root } from './sources.ts';

const folder = join(root, rulebookPath);
const pages = await renderRulebook(root);
const records: readonly (readonly [string, readonly { readonly id: string; readonly title: string }[]])[] =
  Object.entries(index);

/** A page's headings, as the anchors they make. */
const anchors = (text: string): string[] => [...text.matchAll(/^## ([a-z0-9-]+)$/gm)].map(([, id]) => id!);

describe('the rule book', () => {
  test('is up to date: else run `npm run generate`', () => {
    expect(readdirSync(folder).sort()).toEqual([...pages.keys()].sort());
    const stale = [...pages].filter(([name, text]) => readFileSync(join(folder, name), 'utf8') !== text);
    expect(stale.map(([name]) => name)).toEqual([]);
  });

  test('comes out the same twice', async () => {
    expect(await renderRulebook(root)).toEqual(pages);
  });

  test.each(records)('has every record of %s, in order', (name, all) => {
    expect(anchors(pages.get(`${name}.md`) ?? '')).toEqual(all.map(({ id }) => id));
  });

  test('every record has its reason and its sources', () => {
    for (const [name] of records) {
      for (const entry of pages.get(`${name}.md`)!.split(/^## /m).slice(1)) {
        expect(entry).toMatch(/^- Why: ./m);
        expect(entry).toMatch(/^- Sources:\n {2}- ./m);
      }
    }
  });

  test('every link leads to a record', () => {
    const there = new Set([...pages].flatMap(([name, text]) => [name, ...anchors(text).map((id) => `${name}#${id}`)]));
    const links = [...pages.values()].flatMap((text) =>
      [...text.matchAll(/\]\(([a-z]+\.md(?:#[a-z0-9-]+)?)\)/g)].map(([, to]) => to!),
    );
    expect(links.length).toBeGreaterThan(100);
    expect(links.filter((to) => !there.has(to))).toEqual([]);
  });

  test('shows nothing that is no word', () => {
    for (const text of pages.values()) expect(text).not.toMatch(/undefined|NaN|\[object|: false$|: $/m);
  });

  test('tells every quantity, and what nothing published stands behind', () => {
    const coverage = pages.get('coverage.md')!;
    for (const { id } of index.quantities) expect(coverage).toContain(`| [${id}](quantities.md#${id}) |`);
    for (const heading of ['Rests on memory only', 'No published source']) expect(coverage).toContain(`## ${heading}`);
  });
});

describe('an entry, from the record to the page', () => {
  const entry = (page: string, id: string): string =>
    pages
      .get(page)!
      .split(/^## /m)
      .find((each) => each.startsWith(`${id}\n`))!;

  test('has the formula in words, and its example', () => {
    const text = entry('relations.md', 'premix-mass');
    expect(text).toContain('mix in place = patch area × average compacted depth × compacted weight');
    expect(text).toContain('Examples:');
  });

  test('has the figure that is taken, with its range, and how a source was seen', () => {
    const text = entry('quantities.md', 'unit-weight');
    expect(text).toContain('110 lb/sq yd/in (105 lb/sq yd/in to 120 lb/sq yd/in)');
    expect(text).toMatch(/\((read|as restated by others|from memory, to be confirmed)\)$/m);
  });

  test('has the bound of a limit, and where it stops the work', () => {
    const text = entry('limits.md', 'lift-max');
    for (const words of [
      'At most [lift-max](quantities.md#lift-max)',
      'A stop from 1 1/2 in',
      'breaks: lift-thickness',
    ])
      expect(text).toContain(words);
  });
});
