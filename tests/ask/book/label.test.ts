import { expect, test } from 'vitest';
import { ask } from '../../../src/ask/ask.ts';
import type { Job } from '../../../src/ask/reply.ts';

test('the number of a patch is no figure of it, and a further size is a patch, not a card', () => {
  let job: Job | undefined;
  const say = (question: string) => {
    const reply = ask({ question, ...(job ? { job } : {}) });
    job = reply.job;
    return reply;
  };
  say('300 x 12 ft at 2 in');
  say('add this patch to the job');
  expect(say('we laid 42 tons on patch 1').given).toMatchObject([{ quantity: 'placed-mass', number: 42 }]);
  expect(say('done with patch 1').given).toEqual([]);
  expect(say('next patch 200 x 10 at 1.5 in').kind).toBe('clarify');
  expect(say('add it to the job').job.book?.patches.map(({ label }) => label)).toEqual(['1', '2']);
});
