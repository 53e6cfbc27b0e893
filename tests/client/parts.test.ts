import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { ask } from '../../src/ask/ask.ts';
import type { Reply, Request } from '../../src/ask/reply.ts';
import { answer, moreParts, partsFrom } from '../../src/client/answers.ts';

const corpus = readFileSync(new URL('../corpus/questions.txt', import.meta.url), 'utf8')
  .split('\n')
  .map((line) => line.trim())
  .filter((line) => line && !line.startsWith('#'));
const rows = 'station,left,right\n0+00,1,1\n0+25,1,3\n0+50,1,1\n12 ft wide';
const ofParts = [
  rows,
  'depths every 25 ft: 1, 2, 1.5, 1 in, 12 ft wide',
  'add a patch 300 x 12 ft at 2 in to the job',
  'we laid 42 tons on patch 3',
  "what's left on the job",
  '140 ft of 300 laid with 21 tons',
  'what is a windrow',
  'five question quiz on rolling',
  'lay out the work zone for a 300 ft patch, 45 mph, 12 ft lane, rural two-lane road',
  'how many lifts for a patch 4 in deep',
];
/** Each on a job of its own that another part has had a hand in. */
const followUps: readonly (readonly [string, string])[] = [
  [rows, 'how many tons is that'],
  [rows, 'what about 14 ft wide'],
  ['add patch 1, 300 x 12 ft at 2 in', 'how many tons for patch 1'],
  ['add patch 1, 300 x 12 ft at 2 in', 'how many tons for 200 x 10 ft at 2 in'],
  ['how many tons for 300 x 12 ft at 2 in', 'what about 3 in'],
];

const requests: Request[] = [
  ...[...corpus, ...ofParts].map((question) => ({ question })),
  ...followUps.map(([first, question]) => ({ question, job: ask({ question: first }).job })),
];

/** What the phone answers, undefined where it says that it cannot yet. */
const asked = (request: Request): Promise<Reply | undefined> => answer(request).catch(() => undefined);

test('what the phone answers before all of it is here is what it answers with all of it', async () => {
  partsFrom(() => Promise.reject(new Error('no signal')));
  let early = 0;
  for (const request of requests) {
    const reply = await asked(request);
    if (!reply) continue;
    early += 1;
    // Only the cards to read on are not told yet.
    expect(reply, JSON.stringify(request)).toEqual({ ...ask(request), cards: [] });
  }
  // Most of what crews ask is figures.
  expect(early).toBeGreaterThan(corpus.length / 2);
  for (const question of ofParts) expect(await asked({ question }), question).toBeUndefined();
}, 60_000);

test('and with all of it, what the server answers', async () => {
  partsFrom(() => import('../../src/client/more.ts'));
  await moreParts();
  for (const request of requests) expect(await asked(request), JSON.stringify(request)).toEqual(ask(request));
}, 60_000);
