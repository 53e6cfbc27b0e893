import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { describe, expect, test } from 'vitest';
import { indexPath, recordIds, renderIndex } from '../../scripts/generate.mjs';
import { idPattern, kinds } from '../../scripts/kinds.mjs';
import { root } from './sources.ts';

const folders = [...new Set(kinds.map(({ folder }) => folder))];
const records = folders.flatMap((folder) =>
  recordIds(root, folder).map((id) => ({ path: `${folder}/${id}`, folder, id })),
);

describe('one record a file', () => {
  test('there are records', () => {
    expect(records.length).toBeGreaterThan(0);
  });

  test('every file name is an id', () => {
    expect(records.filter(({ id }) => !idPattern.test(id))).toEqual([]);
  });

  test.each(records.map((record) => [record.path, record] as const))(
    '%s holds the record it is named for',
    async (_, { folder, id }) => {
      const url = pathToFileURL(join(root, 'src/rules', folder, `${id}.ts`)).href;
      const module = (await import(/* @vite-ignore */ url)) as { default?: { kind: string; id: string } };
      expect(module.default, 'a record is the default export of its file').toMatchObject({ id });
      const fitting = kinds.filter((kind) => kind.folder === folder).map(({ kind }) => kind);
      expect(fitting, `kinds of record in ${folder}`).toContain(module.default?.kind);
      expect(Object.keys(module), 'a record file exports its record and nothing else').toEqual(['default']);
    },
  );

  test('every folder of src/rules is a kind of record, and holds nothing else', () => {
    const folders = readdirSync(join(root, 'src/rules'), { withFileTypes: true }).filter((entry) =>
      entry.isDirectory(),
    );
    const known = new Set(kinds.map(({ folder }) => folder));
    expect(
      folders.map(({ name }) => name).filter((name) => !known.has(name)),
      'a new kind of record needs its line in scripts/kinds.mjs',
    ).toEqual([]);
    for (const { name } of folders) {
      const others = readdirSync(join(root, 'src/rules', name)).filter((file) => !file.endsWith('.ts'));
      expect(others, `in src/rules/${name}`).toEqual([]);
    }
  });
});

test('the index of records is up to date', () => {
  const committed = readFileSync(join(root, indexPath), 'utf8');
  expect(committed === renderIndex(root), `${indexPath} is stale: run \`npm run generate\``).toBe(true);
});
