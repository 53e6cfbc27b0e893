import { expect, test } from 'vitest';
import { readFiles } from '../../src/server/command/files.ts';

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
