import { workedOut } from '../ask/book/at-hand.ts';
import { merge } from '../ask/book/book.ts';
import type { Change } from '../ask/book/change.ts';
import { dayRecord } from '../ask/book/day.ts';
import { isDate } from '../ask/book/read-change.ts';
import { seasonOf } from '../ask/book/season.ts';
import { systemOfSheet } from '../ask/book/sheet.ts';
import { dayPage } from '../ask/views/book/day.tsx';
import type { JobPage } from '../ask/views/book/forms.tsx';
import { jobPage } from '../ask/views/book/job.tsx';
import { seasonPage } from '../ask/views/book/season.tsx';
import { startPage } from '../ask/views/book/start.tsx';
import type { Dress } from '../ask/views/document.tsx';
import { knowledge } from '../rules/knowledge.ts';
import { type KeptJob, keptJob, stampHere, unsentOf } from './book-kept.ts';
import { syncJob } from './book-sync.ts';

const { version } = knowledge;

/** Which page of which job an address is for. */
export type Place =
  | { readonly page: 'start' }
  | { readonly page: 'job' | 'season'; readonly key: string }
  | { readonly page: 'day'; readonly key: string; readonly day: string };
export type PlaceOfJob = Exclude<Place, { readonly page: 'start' }>;

/** Reads an address; undefined for a page that only the server has. */
export function placeIn(path: string): Place | undefined {
  const [, first, key, page, day, ...rest] = path.replace(/\/$/, '').split('/');
  if (first !== 'job' || rest.length > 0) return undefined;
  if (key === undefined) return { page: 'start' };
  if (page === undefined) return { page: 'job', key };
  if (page === 'season' && day === undefined) return { page, key };
  return page === 'day' && isDate(day) ? { page, key, day } : undefined;
}

/** Changes as this phone has them: the server's in its order, then those that wait. */
export async function changesHere(key: string): Promise<Change[]> {
  const job = await keptJob(key);
  return withUnsent(job, await unsentOf(key));
}

export function withUnsent(job: KeptJob | undefined, waiting: readonly Change[]): Change[] {
  const server = job?.server ?? [];
  const there = new Set(server.map(({ id }) => id));
  return [...server, ...merge(waiting, []).filter(({ id }) => !there.has(id))];
}

export async function documentOfJob({ pathname, searchParams }: URL, dress: Dress): Promise<string | undefined> {
  const place = placeIn(pathname);
  if (!place) return undefined;
  if (place.page === 'start') {
    const talk = searchParams.has('talk') ? await (await import('./job.ts')).talkToCarry() : undefined;
    return startPage({ version, dress, ...(talk ? { talk } : {}) });
  }
  // One that was never opened here may yet come.
  if (!(await keptJob(place.key))) await syncJob(place.key);
  const job = await keptJob(place.key);
  return job && pageOf(place, job, await unsentOf(place.key), dress);
}

/** A page of a job as a whole document. */
export function pageOf(
  place: PlaceOfJob,
  job: KeptJob,
  waiting: readonly Change[],
  dress: Dress,
  more: Partial<JobPage> = {},
): string {
  const changes = withUnsent(job, waiting);
  const address = `/job/${place.key}`;
  const { book, sheet, totals, fault } = workedOut(changes);
  const common = { address, version, dress };
  switch (place.page) {
    case 'day':
      return dayPage({ ...common, sheet, record: dayRecord(sheet, totals, place.day) });
    case 'season':
      return seasonPage({
        ...common,
        roads: seasonOf([{ sheet, totals }]),
        metric: systemOfSheet(sheet) === 'metric',
        unread: 0,
      });
    case 'job':
      return jobPage({
        ...common,
        role: job.role,
        book,
        changes,
        sheet,
        totals,
        once: () => stampHere(book),
        ...more,
        said: [...(more.said ?? []), ...(fault ? [fault] : [])],
      });
  }
}
