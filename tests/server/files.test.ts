import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { fileFaults } from '../../src/server/command/file-faults.ts';
import { type Files, readFiles } from '../../src/server/command/files.ts';

const example = 'docs/examples/fema-rates-2025.json';

test('files named in a call are read, each for itself', () => {
  expect(readFiles({})).toEqual({});
  expect(readFiles({ rates: example })).toMatchObject({ rates: { year: 2025 } });
  expect(readFiles({ agency: 'docs/examples/alder-county.json', rates: example })).toMatchObject({
    agency: { source: 'Maintenance directive 7' },
    rates: { year: 2025 },
  });
});

test('a file that cannot be read is named, with what to do, and is never left out in silence', () => {
  expect(readFiles({ rates: 'docs/no-such.json' })).toMatch(/^--rates docs\/no-such\.json: .*Check the path/);
  expect(readFiles({ agency: 'README.md' })).toMatch(/^--agency README\.md: not well-formed JSON \(.*Mend it/);
});

test('a fault in a file is told with the line it stands on', () => {
  const path = join(mkdtempSync(join(tmpdir(), 'files-')), 'county.json');
  const file = {
    name: 'A county',
    source: 'a directive',
    limits: { 'lift-max': { max: { number: 1.5, unit: 'ton' } } },
  };
  writeFileSync(path, JSON.stringify(file, null, 2));
  const call = { agency: path };
  const [fault] = fileFaults(call, readFiles(call) as Files);
  expect(fault).toContain(`${path}, line 8, at limits.lift-max.max.unit: lift-thickness is a length`);
  expect(
    fileFaults(
      { agency: 'docs/examples/alder-county.json' },
      readFiles({ agency: 'docs/examples/alder-county.json' }) as Files,
    ),
  ).toEqual([]);
});
