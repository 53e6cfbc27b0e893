import { expect, test } from 'vitest';
import { ask } from '../../src/ask/ask.ts';

test.each([
  [
    'lay out a lane closure on a four lane freeway at 65 mph, 12 ft lane, 1500 ft of work',
    'end of the closure 8,165 ft',
  ],
  ['lay out the zone for a 300 ft patch at 45 mph on a two-lane county road', 'Sign to sign 3,860 ft'],
  ['lay out a closed 10 ft shoulder at 55 mph on a rural road, 300 ft of work', 'end of the work 1,979 ft'],
])('the step of setting up says the length of the zone asked for: %s', (question, length) => {
  const { steps } = ask({ question });
  const text = steps.map((step) => step.text).join(' ');
  expect(text).toContain(length);
  expect(text.match(/Sign to sign|Farthest sign to the end/g)).toHaveLength(1);
});

// MUTCD 11th ed., section 6N.01, paragraph 2, as restated by others: 1 hour, one daylight period, 3 days.
test.each([
  'work duration categories',
  'we are here 2 days, what duration is that, short term?',
  'is a 2 day job short term or intermediate term',
])('the kinds of duration are told, and none is taken for said: %s', (question) => {
  const { text } = ask({ question });
  for (const part of ['Up to an hour', 'one daylight period', 'up to three days', 'over an hour at night'])
    expect(text).toContain(part);
  expect(text).not.toContain('Holds');
});

test('a farm-to-market road is a rural one', () => {
  // MUTCD 11th ed., Table 6B-1, rural.
  expect(ask({ question: 'sign spacing on a farm to market road' }).values[0]).toMatchObject({
    number: 500,
    unit: 'ft',
  });
});

test.each([
  [9, 'caution'],
  [10, 'ok'],
])('%i ft of open lane is held against the 10 ft recommended', (width, status) => {
  // MUTCD 11th ed., section 6N.07.
  const { checks } = ask({ question: `is ${width} ft of open lane ok` });
  expect(checks.find(({ rule }) => rule === 'open-lane')).toMatchObject({ status });
});
