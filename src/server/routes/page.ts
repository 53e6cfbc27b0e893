import type { Context } from 'hono';
import type { Doors } from '../doors.ts';
import type { App, Env } from '../env.ts';
import { type Form, fieldsOf, readForm } from '../form.ts';
import { limitBody } from '../limit-body.ts';
import { formLimit } from '../limits.ts';
import { onlyThese } from '../methods.ts';
import { pageAfter } from '../page-after.ts';
import { problemPage } from '../problem.ts';
import { en } from '../wording/en.ts';

const formTypes = ['application/x-www-form-urlencoded', 'multipart/form-data'];

/** GET and POST /: the page people ask on. The form works without any script; with `q` a link can hold a question. */
export function pageRoute(app: App, doors: Doors): void {
  const show = (c: Context<Env>, form: Form, asking: boolean) => {
    const { html, ok } = pageAfter(form, asking, doors);
    return c.html(html, ok ? 200 : 422, { 'Content-Language': 'en' });
  };
  app.get('/', (c) => show(c, readForm(new URL(c.req.url).searchParams), c.req.query('q') !== undefined));
  app.post(
    '/',
    async (c, next) =>
      isForm(c.req.header('Content-Type')) ? next() : problemPage(c, 415, en.detail[415](formTypes[0]!)),
    limitBody(formLimit, (c) => problemPage(c, 413, en.detail[413](formLimit))),
    async (c) => {
      const fields = await fieldsOf(c);
      return fields ? show(c, readForm(fields), true) : problemPage(c, 400, en.detail.form);
    },
  );
  onlyThese(app, '/', ['GET', 'POST']);
}

function isForm(contentType: string | undefined): boolean {
  return formTypes.includes(contentType?.split(';', 1)[0]?.trim().toLowerCase() ?? '');
}
