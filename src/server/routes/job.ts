import type { Context } from 'hono';
import { bodyLimit } from 'hono/body-limit';
import { act } from '../../ask/book/act.ts';
import { fold } from '../../ask/book/book.ts';
import type { Change } from '../../ask/book/change.ts';
import { isRole } from '../../ask/book/roles.ts';
import { engine } from '../../ask/engine.ts';
import { readJob } from '../../ask/job.ts';
import type { JobPage } from '../../ask/views/book/forms.tsx';
import { jobPage } from '../../ask/views/book/job.tsx';
import { startPage } from '../../ask/views/book/start.tsx';
import { jsonIn } from '../../rules/json.ts';
import type { Doors } from '../doors.ts';
import { dress } from '../dress.ts';
import type { App, Env } from '../env.ts';
import { fieldsOf } from '../form.ts';
import { addKey, changesOf, keep, mostChanges, type OpenedJob, openJob, stampNow, startJob } from '../job/job.ts';
import { acted, propsOf } from '../job/page-of.ts';
import { talkChanges } from '../job/talk-changes.ts';
import { jobPath as path, withJob } from '../job/with-job.ts';
import { onlyThese } from '../methods.ts';
import { problemPage } from '../problem.ts';
import type { Store } from '../store/store.ts';
import { en } from '../wording/en.ts';
import { job as words } from '../wording/job.en.ts';
import { jobFileRoutes } from './job-files.ts';

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
      const fields = await fieldsOf(c);
      return fields ? write(c, store, opened, address, fields, doors) : problemPage(c, 400, en.detail.form);
    })(c),
  );
  onlyThese(app, `${path}/:key`, ['GET', 'POST']);

  app.post(`${path}/:key/links`, limited, (c) =>
    withJob(doors, async (store, opened, address) => {
      const fields = await fieldsOf(c);
      return fields ? link(c, store, opened, address, fields, doors) : problemPage(c, 400, en.detail.form);
    })(c),
  );
  onlyThese(app, `${path}/:key/links`, ['POST']);
  jobFileRoutes(app, doors);
}

const now = (): string => new Date().toISOString();
const textIn = (fields: FormData, name: string): string => {
  const value = fields.get(name);
  return typeof value === 'string' ? value : '';
};

async function start(c: Context<Env>, fields: FormData, { store, version }: Doors): Promise<Response> {
  const [name, road, list] = ['name', 'road', 'text'].map((field) => textIn(fields, field)) as [string, string, string];
  const talk = textIn(fields, 'talk');
  const draft = { name, road, list };
  const refuse = (error: string) =>
    c.html(startPage({ error, draft, version, dress, ...carried(talk) }), 422, { 'Content-Language': 'en' });
  const only = textIn(fields, 'carry');
  if (only !== '')
    return c.html(startPage({ draft, version, dress, ...carried(only) }), 200, { 'Content-Language': 'en' });
  const changes: Change[] = [];
  const said: string[] = [];
  let rejected: string | undefined;
  for (const [what, sent] of [
    ['job', { name, road }],
    ['import', { text: list }],
  ] as const) {
    if (Object.values(sent).every((text) => text.trim() === '')) continue;
    const book = fold(changes);
    const done = act((field) => (field === 'do' ? what : ((sent as Record<string, string>)[field] ?? '')), {
      engine,
      role: 'edit',
      changes,
      seen: book,
      now: book,
      stamp: () => stampNow(book),
    });
    if ('fault' in done) return refuse(done.fault);
    changes.push(...done.changes);
    said.push(...done.said);
    rejected ??= done.draft;
  }
  changes.push(...talkChanges(talk, () => stampNow(fold(changes))));
  const opened = await store();
  const key = await startJob(opened, changes, now());
  const address = `${path}/${key}`;
  if (said.length === 0) return c.redirect(address, 303);
  const found = (await openJob(opened, key)) as OpenedJob;
  c.header('Content-Location', address);
  return show(c, opened, found, address, { version } as Doors, { said, draft: rejected });
}

/** The patches of a talk that are to be carried on, as the start page shows them. */
function carried(text: string): { talk?: { job: string; patches: number } } {
  const patches = talkOf(text)?.patches.length ?? 0;
  return patches > 0 ? { talk: { job: text, patches } } : {};
}

function talkOf(text: string) {
  return readJob(jsonIn(text)?.json)?.book;
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
  const links = opened.role === 'edit' ? await store.links(opened.log) : undefined;
  const listed = links?.map(({ id, role, madeAt, revokedAt }) => ({
    id,
    role,
    day: madeAt.slice(0, 10),
    revoked: revokedAt?.slice(0, 10),
  }));
  const props = propsOf(address, opened, changes, version, { ...(listed ? { links: listed } : {}), ...more });
  return c.html(jobPage(props), status, { 'Content-Language': 'en' });
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
    return show(c, store, opened, address, doors, { said: done.said, draft: done.draft, by });
  }
  return c.redirect(address, 303);
}

async function link(
  c: Context<Env>,
  store: Store,
  opened: OpenedJob,
  address: string,
  fields: FormData,
  doors: Doors,
): Promise<Response> {
  if (opened.role !== 'edit') return problemPage(c, 403, words.notEditor);
  const revoke = textIn(fields, 'revoke');
  if (revoke === opened.link) return show(c, store, opened, address, doors, { error: words.ownLink }, 422);
  if (revoke !== '') {
    const done = await store.revoke(opened.log, revoke, now());
    return done ? c.redirect(address, 303) : show(c, store, opened, address, doors, { error: words.noLink }, 422);
  }
  const role = textIn(fields, 'role');
  if (!isRole(role)) return problemPage(c, 422, en.detail.form);
  const key = await addKey(store, opened.log, role, now());
  return show(c, store, opened, address, doors, {
    fresh: { role, address: new URL(`${path}/${key}`, c.req.url).href },
  });
}
