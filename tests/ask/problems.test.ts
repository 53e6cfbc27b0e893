import { describe, expect, test } from 'vitest';
import { ask } from '../../src/ask/ask.ts';

describe('each reason for no answer', () => {
  test.each([
    ['no-goal', 'nothing typed', '   '],
    ['no-goal', 'figures without a question', '300 x 12 ft, 2 in deep'],
    ['missing-fact', 'the depth is not given', 'how many tons for 300 x 12 ft'],
    ['missing-fact', 'the kind of road is not given', 'sign spacing'],
    ['missing-fact', 'nothing is given', 'how many tons'],
    ['unit-wrong', 'tons for a length', '300 tons long and 12 ft wide, 2 in deep, how many square yards'],
    ['conflict', 'an area that the size does not make', '300 x 12 ft is 500 sq yd, 2 in deep, how many tons'],
    ['out-of-range', 'a length of nothing', 'how many tons for 0 ft long, 12 ft wide, 2 in deep'],
    ['out-of-range', 'less than nothing', 'how many tons for -5 ft long, 12 ft wide, 2 in deep'],
    ['out-of-range', 'a patch 2 ft deep', 'how many tons for 300 ft long, 12 ft wide and 2 ft deep'],
    ['out-of-range', 'a patch of 40 miles', 'how many tons for 40 miles long, 12 ft wide, 2 in deep'],
    ['out-of-range', 'more than can be worded', 'how many tons for 999999999999300 ft long, 12 ft wide, 2 in deep'],
    ['out-of-range', 'past the end of the table', 'buffer length at 80 mph'],
    ['out-of-scope', 'nothing of the trade', 'tell me a joke about penguins'],
    ['out-of-scope', 'too long a text', `how many tons ${'and more '.repeat(250)}`],
  ])('%s: %s', (reason, _, question) => {
    const reply = ask({ question });
    expect({
      kind: reply.kind === 'clarify' || reply.kind === 'unknown',
      reason: reply.reason,
      values: reply.values,
    }).toEqual({ kind: true, reason, values: [] });
    expect(reply.text.length).toBeGreaterThan(10);
  });

  test('a reply that asks says what it knows, and offers what is common', () => {
    const { clarify, text, given } = ask({ question: 'how many tons for 300 x 12 ft' });
    expect(clarify?.quantity).toBe('patch-depth');
    expect(clarify?.choices.length).toBeGreaterThan(1);
    expect(text).toContain('300 ft');
    expect(text).toContain('12 ft');
    expect(given.map(({ quantity }) => quantity)).toEqual(['patch-length', 'patch-width']);
  });

  test('every button it offers is an answer to what it asked', () => {
    for (const question of [
      'how many tons for 300 x 12 ft',
      'sign spacing',
      'taper length 45 mph 12 foot lane',
      'buffer length',
      'how many lifts',
    ]) {
      const asked = ask({ question });
      expect(asked.kind, question).toBe('clarify');
      for (const { send, text } of asked.clarify!.choices) {
        const { kind, clarify } = ask({ question: send, job: asked.job });
        expect(kind === 'clarify' && clarify?.quantity === asked.clarify?.quantity, `${question} → ${text}`).toBe(
          false,
        );
      }
    }
  });

  test('a figure that cannot be is not kept in the job', () => {
    const { job } = ask({ question: 'how many tons for 0 ft long, 12 ft wide, 2 in deep' });
    expect(job.facts.map(({ quantity }) => quantity)).not.toContain('patch-length');
  });

  test('one that is to be judged is judged, however absurd', () => {
    expect(ask({ question: 'can we lay a 15 inch lift' }).verdict).toMatchObject({ rule: 'lift-max', status: 'stop' });
  });

  test('ends of what is likely are still likely', () => {
    // 12 in of depth and 1 ft of width are worked with: 300 × 1 ÷ 9 × 12 × 0.055 = 22
    expect(ask({ question: 'how many tons for 300 ft long, 1 ft wide, 12 in deep' }).values[0]?.number).toBeCloseTo(
      22,
      9,
    );
  });
});
