import { expect } from 'vitest';
import type { Reply } from '../../src/ask/reply.ts';

/**
 * What every reply must hold, whatever was asked: figures that are numbers, words without holes in them, and nothing said
 * to be read that does not stand in the question.
 */
export function soundReply(reply: Reply, question: string): void {
  const { values, given, kept, ignored, assumed, text } = reply;
  for (const each of [...values, ...given, ...kept, ...assumed]) {
    for (const end of ['number', 'low', 'high'] as const) {
      if (end in each)
        expect(Number.isFinite((each as Record<string, unknown>)[end]), `${end} of ${each.quantity}`).toBe(true);
    }
  }
  expect(text.trim(), 'a text').not.toBe('');
  const words = [
    text,
    ...values.map((each) => each.text),
    ...reply.checks.map((each) => each.text),
    ...reply.next,
  ].join('\n');
  expect(words).not.toMatch(/\bNaN\b|\bundefined\b|\[object|Infinity|\{[a-z-]{1,60}\}/);
  expect(new Set(reply.next).size, 'nothing is offered twice').toBe(reply.next.length);
  for (const each of [...given, ...ignored]) {
    // A choice is heard in the whole of a question, and has no one place.
    if (!('from' in each)) continue;
    const { from } = each;
    expect(from[0], 'start of what was read').toBeGreaterThanOrEqual(0);
    expect(from[1], 'end of what was read').toBeLessThanOrEqual(question.length);
    expect(question.slice(...from).trim(), 'what was read').not.toBe('');
  }
  for (const each of ignored) expect(each.text).toBe(question.slice(...each.from));
}
