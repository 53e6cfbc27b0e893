import { describe, expect, test } from 'vitest';
import { judgeLimit } from '../../src/rules/judge.ts';
import { knowledge } from '../../src/rules/knowledge.ts';
import { found, solved } from '../rules/facts.ts';
import { costRegressions } from './cost-regression.ts';
import { grader } from './grader.ts';
import { graderRegressions } from './grader-regression.ts';
import { roller } from './roller.ts';
import { rollerRegressions } from './roller-regression.ts';
import { tack } from './tack.ts';
import { tackRegressions } from './tack-regression.ts';
import { trucks } from './trucks.ts';
import { trucksRegressions } from './trucks-regression.ts';
import { bounds } from './weather.ts';
import { weatherRegressions } from './weather-regression.ts';
import { windrowRegressions } from './windrow-regression.ts';

const published = [...tack, ...grader, ...roller, ...trucks];
const regressions = [
  ...tackRegressions,
  ...windrowRegressions,
  ...graderRegressions,
  ...rollerRegressions,
  ...trucksRegressions,
  ...costRegressions,
  ...weatherRegressions,
];

describe('worked examples as printed', () => {
  test.each(published.map((line) => [`${line.document}, ${line.place}`, line] as const))('%s', (_, line) => {
    const { given, finds, printed, rounded } = line;
    expect(Math.abs(found(given, finds, printed[1]) - printed[0])).toBeLessThanOrEqual(rounded + 1e-9 * printed[0]);
  });
});

describe('bounds as printed', () => {
  test.each(bounds.map((line) => [`${line.document}, ${line.place}`, line] as const))(
    '%s',
    (_, { rule, facts, is }) => {
      expect(judgeLimit(knowledge.limits.get(rule)!, solved(facts)).status).toBe(is);
    },
  );
});

describe('regression', () => {
  test.each(regressions.map((line) => [line.what, line] as const))('%s', (_, { given, finds, worked, within }) => {
    expect(Math.abs(found(given, finds, worked[1]) - worked[0])).toBeLessThanOrEqual(within + 1e-9 * worked[0]);
  });
});
