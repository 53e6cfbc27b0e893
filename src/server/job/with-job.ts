import type { Context } from 'hono';
import type { Doors } from '../doors.ts';
import type { Env } from '../env.ts';
import { problemPage } from '../problem.ts';
import type { Store } from '../store/store.ts';
import { job as words } from '../wording/job.en.ts';
import { type OpenedJob, openJob } from './job.ts';

export const jobPath = '/job';

type Work = (store: Store, opened: OpenedJob, address: string) => Promise<Response>;

/** Opens the job that the key in the address is for; says so when there is none, or none any more. */
export const withJob =
  (doors: Doors, work: Work) =>
  async (c: Context<Env>): Promise<Response> => {
    const key = c.req.param('key') ?? '';
    const store = await doors.store();
    const opened = await openJob(store, key);
    if (opened === 'revoked') return problemPage(c, 410, words.revoked);
    if (!opened) return problemPage(c, 404, words.unknown);
    return work(store, opened, `${jobPath}/${key}`);
  };
