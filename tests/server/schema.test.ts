import { describe, expect, test } from 'vitest';
import { replySchema } from '../../src/server/schema/reply.ts';
import type { Same } from '../../src/server/schema/same.ts';
import { fakeAsk } from './fake.ts';

const reply = fakeAsk({ question: 'everything' });

test('types are the same only when every member is, optional ones too', () => {
  // @ts-expect-error a member more
  const optional: Same<{ a: string }, { a: string; b?: string }> = true;
  // @ts-expect-error a wider member
  const wider: Same<{ a: 'ok' | 'stop' }, { a: string }> = true;
  const fixed: Same<{ a: string[] }, { readonly a: readonly string[] }> = true;
  expect([optional, wider, fixed]).toEqual([true, true, true]);
});

describe('the schema of a reply', () => {
  test('takes a reply with everything in it', () => {
    expect(replySchema.parse(reply)).toEqual(reply);
  });

  test.each(Object.keys(reply).filter((name) => !['verdict', 'clarify', 'reason', 'quiz'].includes(name)))(
    'misses %s',
    (name) => {
      const { [name as keyof typeof reply]: _, ...rest } = reply;
      expect(replySchema.safeParse(rest).success).toBe(false);
    },
  );

  test.each([
    ['a number that is none', { values: [{ ...reply.values[0], number: Number.NaN }] }],
    ['a number without end', { values: [{ ...reply.values[0], high: Number.POSITIVE_INFINITY }] }],
    ['a unit that is none', { values: [{ ...reply.values[0], unit: 'sq ft' }] }],
    ['a unit that every object has', { values: [{ ...reply.values[0], unit: 'constructor' }] }],
    ['a member of its own', { extra: 1 }],
    ['a member that is there but not set', { verdict: undefined }],
    ['five questions to ask next', { next: ['1', '2', '3', '4', '5'] }],
    ['a job of another version', { job: { ...reply.job, v: 2 } }],
    ['a fact with neither figure nor word', { given: [{ quantity: 'patch-length', from: [0, 3] }] }],
  ])('refuses %s', (_, change) => {
    expect(replySchema.safeParse({ ...reply, ...change }).success).toBe(false);
  });
});
