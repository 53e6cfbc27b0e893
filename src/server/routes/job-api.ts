import { bodyLimit } from 'hono/body-limit';
import type { Change } from '../../ask/book/change.ts';
import { readChange } from '../../ask/book/read-change.ts';
import { mayMake } from '../../ask/book/roles.ts';
import { act } from '../../ask/wording/book-act.en.ts';
import { jsonIn } from '../../rules/json.ts';
import { knowledge } from '../../rules/knowledge.ts';
import type { Doors } from '../doors.ts';
import type { App } from '../env.ts';
import { begin, keep, mostChanges, openJob } from '../job/job.ts';
import { onlyThese } from '../methods.ts';
import { problem, type Wrong } from '../problem.ts';
import { isKey } from '../quiz-class/keys.ts';
import { syncSchema } from '../schema/sync.ts';
import { en } from '../wording/en.ts';
import { job as words } from '../wording/job.en.ts';

const path = '/api/jobs/:key/sync';
const syncLimit = 1024 * 1024;
/** Changes that come back at a time. */
const page = 1000;

/** POST /api/jobs/KEY/sync: takes what a phone wrote down, and gives what others did. Answers when all of it is on disk. */
export function jobApiRoute(app: App, doors: Doors): void {
  app.post(
    path,
    bodyLimit({ maxSize: syncLimit, onError: (c) => problem(c, 413, en.detail[413](syncLimit)) }),
    async (c) => {
      const store = await doors.store();
      const key = c.req.param('key');
      const body = jsonIn(await c.req.text());
      const sent = syncSchema.safeParse(body?.json);
      if (sent.data?.begin && isKey(key)) await begin(store, key, new Date().toISOString());
      const opened = await openJob(store, key);
      if (opened === 'revoked') return problem(c, 410, words.revoked);
      if (!opened) return problem(c, 404, words.unknown);
      if (!sent.success)
        return problem(c, body === undefined ? 400 : 422, body === undefined ? en.detail[400] : words.noChanges);
      const changes: Change[] = [];
      const wrong: Wrong[] = [];
      sent.data.changes.forEach((each, at) => {
        const change = readChange(each, knowledge);
        if (typeof change === 'string')
          wrong.push({ detail: words.changeWrong(at, change), pointer: `#/changes/${at}` });
        else changes.push(change);
      });
      if (wrong.length > 0) return problem(c, 422, en.detail[422], wrong);
      if (!changes.every((change) => mayMake(opened.role, change))) return problem(c, 403, act.notAllowed(opened.role));
      if (changes.length > 0) {
        const receipt = await keep(store, opened.log, changes, new Date().toISOString());
        if (!receipt) return problem(c, 422, words.full(mostChanges));
        if (receipt.differing.length > 0)
          return problem(
            c,
            422,
            words.differing,
            receipt.differing.map((id) => ({
              detail: words.differing,
              pointer: `#/changes/${changes.findIndex((change) => change.id === id)}`,
            })),
          );
      }
      const { after } = sent.data;
      const entries = await store.read(opened.log, after, page);
      return c.json({ role: opened.role, length: after + entries.length, changes: entries.map((entry) => entry.body) });
    },
  );
  onlyThese(app, path, ['POST']);
}
