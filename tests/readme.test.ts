import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { ask } from '../src/ask/ask.ts';
import type { Job } from '../src/ask/reply.ts';

/** The exchanges the README prints, each a line "> question" and the reply below it; those of one block are one talk. */
const readme = readFileSync(new URL('../README.md', import.meta.url), 'utf8');
const blocks = [...readme.matchAll(/```ask\n(.*?)\n```/gs)].map(([, block]) =>
  block!
    .split(/^> /m)
    .slice(1)
    .map((exchange) => {
      const [question, ...reply] = exchange.trim().split('\n');
      return { question: question!, reply: reply.join('\n') };
    }),
);

describe('what the README prints is what is answered', () => {
  test('it prints some', () => {
    expect(blocks.length).toBeGreaterThan(2);
  });

  test.each(blocks.map((talk) => [talk[0]!.question, talk] as const))('%s', (_, talk) => {
    let job: Job | undefined;
    for (const { question, reply } of talk) {
      const answer = ask({ question, ...(job ? { job } : {}) });
      expect(answer.text).toBe(reply);
      job = answer.job;
    }
  });
});
