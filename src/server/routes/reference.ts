import type { Context } from 'hono';
import { jobKnownTo } from '../../ask/answering.ts';
import { engine } from '../../ask/engine.ts';
import { jobSheet, patchesOf } from '../../ask/job-sheet.ts';
import { jobPage } from '../../ask/views/job-page.tsx';
import { referencePage } from '../../ask/views/reference.tsx';
import type { Doors } from '../doors.ts';
import { dress } from '../dress.ts';
import type { App, Env } from '../env.ts';
import { fieldsOf, readForm } from '../form.ts';
import { limitBody } from '../limit-body.ts';
import { formLimit } from '../limits.ts';
import { onlyThese } from '../methods.ts';
import { answerNothingHere, problemPage } from '../problem.ts';
import { en } from '../wording/en.ts';

/** Cards, rules and words to look up, each at its own address, and the sheet of the job that a form brings. */
export function referenceRoutes(app: App, { ask, version }: Doors): void {
  const look = (c: Context<Env>) => {
    const html = referencePage(new URL(c.req.url), dress);
    return html ? c.html(html, 200, { 'Content-Language': 'en' }) : answerNothingHere(c);
  };
  for (const path of ['/cards', '/cards/:id', '/rules', '/rules/:kind/:id', '/words']) {
    app.get(path, look);
    onlyThese(app, path, ['GET']);
  }
  const sheet = (c: Context<Env>, job: unknown) => {
    const patches = jobSheet(ask, patchesOf(jobKnownTo(engine, job)));
    return c.html(jobPage({ patches, version, dress }), 200, { 'Content-Language': 'en' });
  };
  app.get('/sheet', (c) => sheet(c, undefined));
  app.post(
    '/sheet',
    limitBody(formLimit, (c) => problemPage(c, 413, en.detail[413](formLimit))),
    async (c) => {
      const fields = await fieldsOf(c);
      return fields ? sheet(c, readForm(fields).job) : problemPage(c, 400, en.detail.form);
    },
  );
  onlyThese(app, '/sheet', ['GET', 'POST']);
}
