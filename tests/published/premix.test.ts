import { expect, test } from 'vitest';
import { found } from '../rules/facts.ts';
import { published } from './premix.ts';
import { regressions } from './premix-regression.ts';

test.each(published.map((worked) => [`${worked.document}, ${worked.place}`, worked] as const))('%s', (_, worked) => {
  const { given, finds, printed, rounded } = worked;
  expect(Math.abs(found(given, finds, printed[1]) - printed[0])).toBeLessThanOrEqual(rounded + 1e-9 * printed[0]);
});

test.each(regressions.map((line) => [line.what, line] as const))(
  'regression: %s',
  (_, { given, finds, worked, within }) => {
    expect(Math.abs(found(given, finds, worked[1]) - worked[0])).toBeLessThanOrEqual(within);
  },
);
