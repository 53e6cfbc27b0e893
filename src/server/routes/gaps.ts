import type { Context } from 'hono';
import { groupGaps } from '../../ask/gaps/group.ts';
import { scrub } from '../../ask/gaps/scrub.ts';
import { gapPage, keeperPage } from '../../ask/views/gaps.tsx';
import { gaps as words } from '../../ask/wording/gaps.en.ts';
import type { Doors } from '../doors.ts';
import { dress } from '../dress.ts';
import type { App, Env } from '../env.ts';
import { fieldsOf } from '../form.ts';
import { clearGaps, gapsOf, isKeeper, keepGap } from '../gaps/gaps.ts';
import { limitBody } from '../limit-body.ts';
import { onlyThese } from '../methods.ts';
import { problemPage } from '../problem.ts';
import type { Store } from '../store/store.ts';
import { en } from '../wording/en.ts';

const path = '/gaps';
const keeperPath = '/keeper/:key';
const formLimit = 16 * 1024;

/** Questions without an answer: sent in by whoever asked, if they want to, and read by the keeper of the rules. */
export function gapRoutes(app: App, doors: Doors): void {
  const { version, ask } = doors;
  const show = (c: Context<Env>, question: string, more: { note?: string; error?: string } = {}) =>
    c.html(gapPage({ question, version, dress, ...more }), more.error ? 422 : 200, { 'Content-Language': 'en' });
  const limited = limitBody(formLimit, (c) => problemPage(c, 413, en.detail[413](formLimit)));
  app.get(path, (c) => show(c, scrub((c.req.query('q') ?? '').slice(0, 2000))));
  app.post(path, limited, async (c) => {
    const fields = await fieldsOf(c);
    if (!fields) return problemPage(c, 400, en.detail.form);
    const typed = fields.get('question');
    const question = scrub(typeof typed === 'string' ? typed.slice(0, 2000) : '');
    if (question.replaceAll(words.left, '').trim() === '') return show(c, '', { error: words.empty });
    const { kind, reason } = ask({ question });
    if (kind !== 'unknown' && kind !== 'clarify') return show(c, '', { note: words.answered });
    const day = new Date().toISOString().slice(0, 10);
    const done = await keepGap(await doors.store(), { question, reason: reason ?? kind, day });
    return done ? show(c, '', { note: words.sent }) : show(c, question, { error: words.full });
  });
  onlyThese(app, path, ['GET', 'POST']);

  const asKeeper = async (c: Context<Env>, work: (store: Store, address: string) => Promise<Response>) => {
    const key = c.req.param('key') ?? '';
    const store = await doors.store();
    return (await isKeeper(store, key)) ? work(store, `/keeper/${key}`) : problemPage(c, 404, words.unknown);
  };
  app.get(keeperPath, (c) =>
    asKeeper(c, async (store, address) =>
      c.html(keeperPage({ address, groups: groupGaps(await gapsOf(store)), version, dress }), 200, {
        'Content-Language': 'en',
      }),
    ),
  );
  app.post(keeperPath, limited, (c) =>
    asKeeper(c, async (store, address) => {
      await clearGaps(store);
      return c.redirect(address, 303);
    }),
  );
  onlyThese(app, keeperPath, ['GET', 'POST']);

  app.get(`${keeperPath}/export.jsonl`, (c) =>
    asKeeper(c, async (store) =>
      c.body((await gapsOf(store)).map((gap) => `${JSON.stringify(gap)}\n`).join(''), 200, {
        'Content-Type': 'application/jsonl; charset=utf-8',
        'Content-Disposition': 'attachment; filename="gaps.jsonl"',
      }),
    ),
  );
  onlyThese(app, `${keeperPath}/export.jsonl`, ['GET']);
}
