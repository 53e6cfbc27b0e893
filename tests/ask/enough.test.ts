import { describe, expect, test } from 'vitest';
import { ask } from '../../src/ask/ask.ts';

/** 300 × 12 ÷ 9 × 2 × 110 ÷ 2000 = 44 tons; 400 sq yd × 0.08 = 32 gal; 12 × 150 ÷ 9 × 1 × 0.055 = 11 tons. */
describe('a figure held against the need', () => {
  test.each([
    ['is 40 tons enough for 300 x 12 ft at 2 in', 'no', '44.0', '4.0'],
    ['is 50 tons enough for 300 x 12 ft at 2 in', 'yes', '44.0', '6.0'],
    ['will 40 tons do 300 x 12 ft at 2 in', 'no', '44.0', '4.0'],
    ['is 44 tons enough for 300 x 12 ft at 2 in', 'yes', '44.0', undefined],
    ['is 12 ton right for 12 x 150 1"', 'yes', '11.0', '1.0'],
    ['300 x 12 ft at 2 in, can I get by with 40 tons', 'no', '44.0', '4.0'],
    ['is 30 gal of tack enough for 300 x 12 ft at .08', 'no', '32', '2'],
    ['is 40 gal of tack enough for 300 x 12 ft at .08', 'yes', '32', '8'],
    ['are 2 loads enough for 300 x 12 ft at 2 in with 15 ton trucks', 'no', '3', '1'],
  ])('%s: %s', (question, answer, need, gap) => {
    const reply = ask({ question });
    expect(['verdict', 'value']).toContain(reply.kind);
    expect(reply.text.toLowerCase()).toMatch(new RegExp(`^${answer}\\b`));
    expect(reply.text).toContain(need);
    if (gap) expect(reply.text).toContain(gap);
    if (reply.verdict) expect(reply.verdict.status).toBe(answer === 'yes' ? 'ok' : 'caution');
  });

  test('what is asked about is worked out without the figure in question', () => {
    const reply = ask({ question: 'is 40 tons enough for 300 x 12 ft at 2 in' });
    expect(reply.values[0]).toMatchObject({ quantity: 'premix-mass', number: 44, unit: 'ton' });
    expect(reply.given).toContainEqual(expect.objectContaining({ quantity: 'premix-mass', number: 40 }));
  });

  test('with the need unknown, what is missing is asked', () => {
    const reply = ask({ question: 'is 40 tons enough for 300 x 12 ft' });
    expect(reply).toMatchObject({ kind: 'clarify', reason: 'missing-fact' });
    expect(reply.clarify?.quantity).toBe('patch-depth');
  });
});
