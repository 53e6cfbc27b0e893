import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { ask } from '../../src/ask/ask.ts';
import type { Reply } from '../../src/ask/reply.ts';
import { createApp } from '../../src/server/app.ts';
import { replySchema } from '../../src/server/schema/reply.ts';
import { holds, readTalk } from './talk.ts';

/** Whole conversations, through the library and through HTTP; the two must answer alike. */
const folder = new URL('.', import.meta.url);
const app = createApp({ ask });

for (const name of readdirSync(folder).filter((file) => file.endsWith('.txt')).sort()) {
  const { units, turns } = readTalk(readFileSync(new URL(name, folder), 'utf8'));
  describe(name.replace('.txt', '').replaceAll('-', ' '), () => {
    let job: unknown;
    for (const { question, wants, line } of turns) {
      test(`line ${line}: ${question}`, async () => {
        const request = { question, ...(job === undefined ? {} : { job }), ...(units ? { units } : {}) };
        const reply = ask(request);
        job = reply.job;
        const answer = await app.request('/api/ask', { method: 'POST', headers: { 'content-type': 'application/json' }, body: JSON.stringify(request) });
        expect((await answer.json()) as Reply).toEqual(JSON.parse(JSON.stringify(reply)));
        expect(replySchema.safeParse(reply).error).toBeUndefined();
        for (const want of wants) holds(want, reply);
      });
    }
  });
}
