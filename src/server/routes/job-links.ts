import type { Context } from 'hono';
import { bodyLimit } from 'hono/body-limit';
import { isRole } from '../../ask/book/roles.ts';
import { type LinksPage, linksPage } from '../../ask/views/book/links.tsx';
import type { Doors } from '../doors.ts';
import { dress } from '../dress.ts';
import type { App, Env } from '../env.ts';
import { fieldsOf } from '../form.ts';
import { addKey, type OpenedJob } from '../job/job.ts';
import { jobPath, withJob } from '../job/with-job.ts';
import { onlyThese } from '../methods.ts';
import { problemPage } from '../problem.ts';
import type { Store } from '../store/store.ts';
import { en } from '../wording/en.ts';
import { job as words } from '../wording/job.en.ts';

const path = `${jobPath}/:key/links`;
const formLimit = 16 * 1024;

/** The links of a job: who edits may make and revoke them. */
export function jobLinkRoutes(app: App, doors: Doors): void {
  const show = async (
    c: Context<Env>,
    store: Store,
    opened: OpenedJob,
    address: string,
    more: Pick<LinksPage, 'error' | 'fresh'> = {},
  ): Promise<Response> => {
    if (opened.role !== 'edit') return problemPage(c, 403, words.notEditor);
    const links = (await store.links(opened.log)).map(({ id, role, madeAt, revokedAt }) => ({
      id,
      role,
      day: madeAt.slice(0, 10),
      own: id === opened.link,
      revoked: revokedAt?.slice(0, 10),
    }));
    const html = linksPage({ address, links, version: doors.version, dress, ...more });
    return c.html(html, more.error ? 422 : 200, { 'Content-Language': 'en' });
  };
  app.get(path, (c) => withJob(doors, async (store, opened, address) => show(c, store, opened, address))(c));
  app.post(
    path,
    bodyLimit({ maxSize: formLimit, onError: (c) => problemPage(c, 413, en.detail[413](formLimit)) }),
    (c) =>
      withJob(doors, async (store, opened, address) => {
        if (opened.role !== 'edit') return problemPage(c, 403, words.notEditor);
        const fields = await fieldsOf(c);
        if (!fields) return problemPage(c, 400, en.detail.form);
        const now = new Date().toISOString();
        const revoke = fields.get('revoke');
        if (revoke === opened.link) return show(c, store, opened, address, { error: words.ownLink });
        if (typeof revoke === 'string')
          return (await store.revoke(opened.log, revoke, now))
            ? c.redirect(`${address}/links`, 303)
            : show(c, store, opened, address, { error: words.noLink });
        const role = fields.get('role');
        if (typeof role !== 'string' || !isRole(role)) return problemPage(c, 422, en.detail.form);
        const key = await addKey(store, opened.log, role, now);
        return show(c, store, opened, address, {
          fresh: { role, address: new URL(`${jobPath}/${key}`, c.req.url).href },
        });
      })(c),
  );
  onlyThese(app, path, ['GET', 'POST']);
}
