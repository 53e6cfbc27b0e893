import type { Context } from 'hono';
import { bodyLimit } from 'hono/body-limit';
import { begin } from '../../ask/book/begin.ts';
import { fold } from '../../ask/book/book.ts';
import { mayMake } from '../../ask/book/roles.ts';
import { talkChanges, talkJob, talkPatches } from '../../ask/book/talk-changes.ts';
import type { JobPage } from '../../ask/views/book/forms.tsx';
import { jobPage } from '../../ask/views/book/job.tsx';
import { type StartPage, startPage } from '../../ask/views/book/start.tsx';
import { act as acts } from '../../ask/wording/book-act.en.ts';
import type { Doors } from '../doors.ts';
import { dress } from '../dress.ts';
import type { App, Env } from '../env.ts';
import { fieldsOf } from '../form.ts';
import { changesOf, keep, mostChanges, type OpenedJob, openJob, stampNow, startJob } from '../job/job.ts';
import { acted, propsOf } from '../job/page-of.ts';
import { jobPath as path, withJob } from '../job/with-job.ts';
import { onlyThese } from '../methods.ts';
import { problemPage } from '../problem.ts';
import type { Store } from '../store/store.ts';
import { en } from '../wording/en.ts';
import { job as words } from '../wording/job.en.ts';
import { jobFileRoutes } from './job-files.ts';
import { jobLinkRoutes } from './job-links.ts';

/** Largest list or saved job that is taken in, in bytes. */
export const listLimit = 6 * 1024 * 1024;

const limited = bodyLimit({ maxSize: listLimit, onError: (c) => problemPage(c, 413, en.detail[413](listLimit)) });

/** The pages of jobs: start one, open it by its link, write in it, share it. All of it works as plain forms. */
export function jobRoutes(app: App, doors: Doors): void {
  const { version } = doors;
  app.get(path, (c) => c.html(startPage({ version, dress }), 200, { 'Content-Language': 'en' }));
  app.post(path, limited, async (c) => {
    const fields = await fieldsOf(c);
    return fields ? start(c, fields, doors) : problemPage(c, 400, en.detail.form);
  });
  onlyThese(app, path, ['GET', 'POST']);

  app.get(`${path}/:key`, (c) =>
    withJob(doors, async (store, opened, address) => show(c, store, opened, address, doors))(c),
  );
  app.post(`${path}/:key`, limited, (c) =>
    withJob(doors, async (store, opened, address) => {
      const fields = await withFile(await fieldsOf(c));
      return fields ? write(c, store, opened, address, fields, doors) : problemPage(c, 400, en.detail.form);
    })(c),
  );
  onlyThese(app, `${path}/:key`, ['GET', 'POST']);

  jobLinkRoutes(app, doors);
  jobFileRoutes(app, doors);
}

/** A file that was chosen stands in the place of the text of its form. */
async function withFile(fields: FormData | undefined): Promise<FormData | undefined> {
  const file = fields?.get('file');
  if (fields && file instanceof File && file.size > 0) fields.set('text', await file.text());
  return fields;
}

const now = (): string => new Date().toISOString();
const textIn = (fields: FormData, name: string): string => {
  const value = fields.get(name);
  return typeof value === 'string' ? value : '';
};

async function start(c: Context<Env>, fields: FormData, { store, version }: Doors): Promise<Response> {
  const field = (name: string): string => textIn(fields, name);
  const talk = field('talk');
  const draft = { name: field('name'), road: field('road'), list: field('text'), link: field('link') };
  const again = (text: string, error?: string) =>
    c.html(startPage({ error, draft, version, dress, ...carried(text) }), error ? 422 : 200, {
      'Content-Language': 'en',
    });
  if (field('carry') !== '') return again(field('job'));
  if (draft.link.trim() !== '') {
    const opened = await store();
    const key = draft.link.trim().split('/').at(-1) ?? '';
    const found = await openJob(opened, key);
    if (found === 'revoked' || !found) return again(talk, found ? words.revoked : words.unknown);
    const onto = await changesOf(opened, found.log);
    const more = talkChanges(talk, () => stampNow(fold(onto)), onto);
    if (!more.every((change) => mayMake(found.role, change))) return again(talk, acts.notAllowed(found.role));
    if (!(await keep(opened, found.log, more, now()))) return again(talk, words.full(mostChanges));
    return c.redirect(`${path}/${key}`, 303);
  }
  const done = begin(field, stampNow);
  if ('fault' in done) return again(talk, done.fault);
  const opened = await store();
  const key = await startJob(opened, done.changes, now());
  const address = `${path}/${key}`;
  if (done.said.length === 0) return c.redirect(address, 303);
  const found = (await openJob(opened, key)) as OpenedJob;
  c.header('Content-Location', address);
  return show(c, opened, found, address, { version } as Doors, { said: done.said, draft: done.draft });
}

/** The patches of a talk that are to be carried on, as the start page shows them. */
function carried(text: string): Pick<StartPage, 'talk'> {
  const job = talkJob(text);
  const patches = job ? talkPatches(job).length : 0;
  return patches > 0 ? { talk: { job: text, patches } } : {};
}

async function show(
  c: Context<Env>,
  store: Store,
  opened: OpenedJob,
  address: string,
  { version }: Pick<Doors, 'version'>,
  more: Partial<JobPage> = {},
  status: 200 | 403 | 422 | 503 = 200,
): Promise<Response> {
  const changes = await changesOf(store, opened.log);
  return c.html(jobPage(propsOf(address, opened, changes, version, more)), status, { 'Content-Language': 'en' });
}

async function write(
  c: Context<Env>,
  store: Store,
  opened: OpenedJob,
  address: string,
  fields: FormData,
  doors: Doors,
): Promise<Response> {
  const changes = await changesOf(store, opened.log);
  const by = textIn(fields, 'initials') || textIn(fields, 'by');
  for (const fresh of [false, true]) {
    const done = acted(fields, opened, changes, fresh);
    if ('fault' in done)
      return show(
        c,
        store,
        opened,
        address,
        doors,
        { error: done.fault, by, draft: textIn(fields, 'text') || undefined },
        422,
      );
    const receipt = await keep(store, opened.log, done.changes, now());
    if (!receipt)
      return show(
        c,
        store,
        opened,
        address,
        doors,
        { error: words.full(mostChanges), by, draft: textIn(fields, 'text') || undefined },
        422,
      );
    // The same form with something else in it, from the Back button: it is a change of its own.
    if (receipt.differing.length > 0) continue;
    if (done.said.length === 0) return c.redirect(address, 303);
    const takeBack =
      textIn(fields, 'do') === 'undo' ? undefined : done.changes.map(({ id }) => id).join(' ') || undefined;
    return show(c, store, opened, address, doors, { said: done.said, draft: done.draft, by, takeBack });
  }
  return c.redirect(address, 303);
}
