import { expect, test } from 'vitest';
import { closingLine, countOf } from '../../scripts/tally.mjs';

const file = (states: string[], ok: boolean) => ({
  children: { allTests: () => states.map((state) => ({ result: () => ({ state }) })) },
  ok: () => ok,
});

test('passed, failed and skipped tests are counted over all files', () => {
  const files = [file(['passed', 'passed', 'skipped'], true), file(['failed', 'passed'], false)];
  expect(countOf(files)).toEqual({ passed: 3, failed: 1, skipped: 1 });
});

test('a file that does not load, and an error outside any test, are failures', () => {
  expect(countOf([file([], false)])).toEqual({ passed: 0, failed: 1, skipped: 0 });
  expect(countOf([file(['passed'], true)], [new Error('late')])).toEqual({ passed: 1, failed: 1, skipped: 0 });
});

test('the closing line', () => {
  expect(closingLine({ passed: 123, failed: 0, skipped: 0 })).toBe('123 passed, 0 failed');
  expect(closingLine({ passed: 1, failed: 2, skipped: 3 })).toBe('1 passed, 2 failed, 3 skipped');
});
