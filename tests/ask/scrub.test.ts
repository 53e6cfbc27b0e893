import { expect, test } from 'vitest';
import { groupGaps } from '../../src/ask/gaps/group.ts';
import { scrub } from '../../src/ask/gaps/scrub.ts';

test.each([
  ['my name is dave, how many wheelbarrows for 300 ft', 'my name is …, how many wheelbarrows for 300 ft'],
  ['Dave says 300 ft of what?', '… says 300 ft of what?'],
  ['is Mr Miller Jones right about the tack', 'is … right about the tack'],
  ['call me at 555-010-4477 about the mix', 'call me at … about the mix'],
  ['mail joe.smith@example.org the order', 'mail … the order'],
  ['see https://example.org/joe for the road', 'see … for the road'],
  ['why does Priya lay it so thick', 'why does … lay it so thick'],
])('%s', (question, kept) => {
  expect(scrub(question)).toBe(kept);
});

test.each([
  'how many tons for 300 x 12 ft at 2 in',
  'Sta 1250+00 to 1262+50, how deep?',
  'WHAT GATE ON THE SPREADER BOX',
  'is 0.0500000 gal/sq yd of SS-1h right',
  'How many rocks. The Grader is down',
  'PG 64-22 at 1,200,000 lb',
])('what tells of nobody stays: %s', (question) => {
  expect(scrub(question)).toBe(question);
});

test('what is kept is short, and a text made to hold it up is read in no time', () => {
  for (const long of ['a '.repeat(50_000), '+1'.repeat(20_000), ' '.repeat(100_000), 'Aa '.repeat(30_000)]) {
    const before = performance.now();
    expect(scrub(long).length).toBeLessThanOrEqual(300);
    expect(performance.now() - before).toBeLessThan(500);
  }
});

test('gaps stand by reason, the commonest first, each question once with how often it came', () => {
  const gap = (question: string, reason: string, day: string) => ({ question, reason, day });
  expect(
    groupGaps([
      gap('b', 'no-rule', '2026-05-01'),
      gap('a', 'no-goal', '2026-05-01'),
      gap('c', 'no-goal', '2026-05-02'),
      gap('a', 'no-goal', '2026-05-03'),
    ]),
  ).toEqual([
    {
      reason: 'no-goal',
      questions: [
        { question: 'a', times: 2, day: '2026-05-03' },
        { question: 'c', times: 1, day: '2026-05-02' },
      ],
    },
    { reason: 'no-rule', questions: [{ question: 'b', times: 1, day: '2026-05-01' }] },
  ]);
});
