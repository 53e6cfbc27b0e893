import type { Context } from 'hono';
import { readWho, resultsAsCsv } from '../../ask/quiz/class-results.ts';
import { readAnswers } from '../../ask/quiz/desk/answers.ts';
import { classScreens } from '../../ask/quiz/desk/class-screen.tsx';
import { type Around, screens, setIn } from '../../ask/quiz/desk/screen.tsx';
import { score } from '../../ask/quiz/mark.ts';
import { desk } from '../../ask/wording/quiz-desk.en.ts';
import type { Doors } from '../doors.ts';
import type { App, Env } from '../env.ts';
import { fieldsOf } from '../form.ts';
import { limitBody } from '../limit-body.ts';
import { formLimit } from '../limits.ts';
import { onlyThese } from '../methods.ts';
import { problemPage } from '../problem.ts';
import { addResult, eraseClass, type OpenedClass, openClass, resultsOf, startClass } from '../quiz-class/class.ts';
import { isKey, newKey } from '../quiz-class/keys.ts';
import { StoreFault } from '../store/fault.ts';
import type { Store } from '../store/store.ts';
import { en } from '../wording/en.ts';

const path = screens.classes;
const words = desk.classes;

type Opened = Exclude<Awaited<ReturnType<typeof openClass>>, undefined>;

/** Classes: a set given out under two addresses, one for the trainer and one for the crew, and what came back. */
export function quizClassRoutes(app: App, { store }: Doors, around: Around): void {
  const show = classScreens(around);
  const limited = limitBody(formLimit, (c) => problemPage(c, 413, en.detail[413](formLimit)));
  const html = (c: Context<Env>, { html, ok }: { readonly html: string; readonly ok: boolean }) =>
    c.html(html, ok ? 200 : 422, { 'Content-Language': 'en' });
  /** Does something with the store; one that cannot is told on a page. */
  const kept = async (c: Context<Env>, work: (store: Store) => Promise<Response>): Promise<Response> => {
    try {
      return await work(await store());
    } catch (fault) {
      if (fault instanceof StoreFault) return problemPage(c, 503, fault.message);
      throw fault;
    }
  };
  /** The same with the class that the key in the address opens, for these roles alone. */
  const opened = (
    c: Context<Env>,
    roles: readonly string[],
    work: (store: Store, found: Opened, own: string) => Promise<Response>,
  ) =>
    kept(c, async (open) => {
      const key = c.req.param('key') ?? '';
      const found = await openClass(open, key);
      return found && roles.includes(found.role)
        ? work(open, found, `${path}/${key}`)
        : problemPage(c, 404, words.gone);
    });

  app.get(path, (c) => html(c, show.start(new URL(c.req.url).searchParams)));
  app.post(path, limited, (c) =>
    kept(c, async (open) => {
      const fields = await fieldsOf(c);
      if (!fields) return problemPage(c, 400, en.detail.form);
      const built = setIn(around.knowledge, fields);
      if ('fault' in built) return problemPage(c, 422, built.fault);
      const key = await startClass(open, built.set, new Date().toISOString());
      return c.redirect(`${path}/${key}`, 303);
    }),
  );
  app.get(`${path}/:key`, (c) =>
    opened(c, ['trainer', 'crew'], async (open, found, own) => {
      if (found.role === 'crew') return html(c, show.crew(found.set, own, newKey()));
      const crew = new URL(`${path}/${found.crewKey}`, c.req.url).href;
      return html(c, show.trainer(found.set, await resultsOf(open, found), own, crew));
    }),
  );
  app.post(`${path}/:key`, limited, (c) =>
    opened(c, ['crew'], async (open, found, own) => {
      const fields = await fieldsOf(c);
      return fields ? html(c, await answered(open, found, own, fields)) : problemPage(c, 400, en.detail.form);
    }),
  );
  const answered = async (open: Store, found: OpenedClass, own: string, fields: FormData) => {
    const text = (name: string): string => {
      const value = fields.get(name);
      return typeof value === 'string' ? value : '';
    };
    const given = readAnswers(found.set.items, fields);
    const who = readWho(text('who'));
    const sheet = isKey(text('sheet')) ? text('sheet') : newKey();
    if (who === undefined) return show.crew(found.set, own, sheet, { given, who: text('who'), error: words.badWho });
    const marked = score(found.set.items, given);
    const at = new Date().toISOString();
    const took = await addResult(open, found, { id: sheet, who, marks: marked.marks, at });
    return show.result(found.set, given, marked, took ? words.sent(who) : words.full);
  };
  app.get(`${path}/:key/file`, (c) =>
    opened(c, ['trainer'], async (open, found) => {
      const results = await resultsOf(open, found);
      const csv = new URL(c.req.url).searchParams.get('format') !== 'json';
      const content = csv
        ? resultsAsCsv(found.set, results)
        : `${JSON.stringify({ set: found.set, results }, null, 2)}\n`;
      const type = csv ? 'text/csv' : 'application/json';
      return c.body(content, 200, {
        'Content-Type': `${type}; charset=utf-8`,
        'Content-Disposition': `attachment; filename="class-results.${csv ? 'csv' : 'json'}"`,
      });
    }),
  );
  app.post(`${path}/:key/erase`, (c) =>
    opened(c, ['trainer'], async (open, found) => {
      await eraseClass(open, found);
      return html(c, show.erased());
    }),
  );
  onlyThese(app, path, ['GET', 'POST']);
  onlyThese(app, `${path}/:key`, ['GET', 'POST']);
  onlyThese(app, `${path}/:key/file`, ['GET']);
  onlyThese(app, `${path}/:key/erase`, ['POST']);
}
