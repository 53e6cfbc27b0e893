import type { Context } from 'hono';
import { madePaths, screenAt } from '../../ask/quiz/desk/at.tsx';
import { longestKept } from '../../ask/quiz/desk/kept.ts';
import { type Around, keptScreen, type Shown, screens, takeScreen } from '../../ask/quiz/desk/screen.tsx';
import { knowledge } from '../../rules/knowledge.ts';
import type { Doors } from '../doors.ts';
import { dress } from '../dress.ts';
import type { App, Env } from '../env.ts';
import { fieldsOf } from '../form.ts';
import { limitBody } from '../limit-body.ts';
import { formLimit } from '../limits.ts';
import { onlyThese } from '../methods.ts';
import { problemPage } from '../problem.ts';
import { en } from '../wording/en.ts';
import { quizClassRoutes } from './quiz-class.ts';
import { quizFileRoute } from './quiz-file.ts';

const around: Around = { knowledge, dress };

/** The trainer's desk: every screen is an address, and a set stands whole in its own. */
export function quizRoutes(app: App, doors: Doors): void {
  for (const path of madePaths) {
    app.get(path, (c) => page(c, screenAt(around, path, new URL(c.req.url).searchParams)!));
    if (path !== screens.take) onlyThese(app, path, ['GET']);
  }
  app.post(screens.take, limited(formLimit), async (c) => {
    const fields = await fieldsOf(c);
    return fields ? page(c, takeScreen(around, fields, true)) : problemPage(c, 400, en.detail.form);
  });
  app.post(screens.kept, limited(longestKept + formLimit), async (c) => {
    const file = (await fieldsOf(c))?.get('set');
    return page(c, keptScreen(around, file instanceof File ? await file.text() : ''));
  });
  onlyThese(app, screens.take, ['GET', 'POST']);
  onlyThese(app, screens.kept, ['POST']);
  quizFileRoute(app);
  quizClassRoutes(app, doors, around);
}

const page = (c: Context<Env>, { html, ok }: Shown) => c.html(html, ok ? 200 : 422, { 'Content-Language': 'en' });

const limited = (most: number) => limitBody(most, (c) => problemPage(c, 413, en.detail[413](most)));
