import type { Context } from 'hono';
import { bodyLimit } from 'hono/body-limit';
import { longestKept } from '../../ask/quiz/desk/kept.ts';
import {
  type Around,
  deskScreen,
  keptScreen,
  practiceScreen,
  type Shown,
  screens,
  sheetScreen,
  signOffScreen,
  takeScreen,
} from '../../ask/quiz/desk/screen.tsx';
import { knowledge } from '../../rules/knowledge.ts';
import type { Doors } from '../doors.ts';
import { dress } from '../dress.ts';
import type { App, Env } from '../env.ts';
import { formLimit } from '../limits.ts';
import { onlyThese } from '../methods.ts';
import { problemPage } from '../problem.ts';
import { en } from '../wording/en.ts';
import { quizClassRoutes } from './quiz-class.ts';
import { quizFileRoute } from './quiz-file.ts';

const around: Around = { knowledge, dress };

/** The trainer's desk: every screen is an address, and a set stands whole in its own. */
export function quizRoutes(app: App, doors: Doors): void {
  const get = (path: string, show: (fields: URLSearchParams) => Shown): void => {
    app.get(path, (c) => page(c, show(new URL(c.req.url).searchParams)));
  };
  get(screens.desk, (fields) => deskScreen(around, fields));
  for (const which of ['sheet', 'key', 'tailgate'] as const)
    get(screens[which], (fields) => sheetScreen(around, fields, which));
  get(screens.take, (fields) => takeScreen(around, fields, false));
  get(screens.signOff, (fields) => signOffScreen(around, fields));
  get(screens.practice, () => practiceScreen(around));
  app.post(screens.take, limited(formLimit), async (c) => {
    const fields = await c.req.formData().catch(() => undefined);
    return fields ? page(c, takeScreen(around, fields, true)) : problemPage(c, 400, en.detail.form);
  });
  app.post(screens.kept, limited(longestKept + formLimit), async (c) => {
    const file = (await c.req.formData().catch(() => undefined))?.get('set');
    return page(c, keptScreen(around, file instanceof File ? await file.text() : ''));
  });
  for (const screen of ['desk', 'sheet', 'key', 'tailgate', 'signOff', 'practice'] as const)
    onlyThese(app, screens[screen], ['GET']);
  onlyThese(app, screens.take, ['GET', 'POST']);
  onlyThese(app, screens.kept, ['POST']);
  quizFileRoute(app);
  quizClassRoutes(app, doors, around);
}

const page = (c: Context<Env>, { html, ok }: Shown) => c.html(html, ok ? 200 : 422, { 'Content-Language': 'en' });

const limited = (most: number) =>
  bodyLimit({ maxSize: most, onError: (c) => problemPage(c, 413, en.detail[413](most)) });
