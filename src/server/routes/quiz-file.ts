import { screens, setIn } from '../../ask/quiz/desk/screen.tsx';
import { fileOf, formats, isFormat } from '../../ask/quiz/export/file.ts';
import { knowledge } from '../../rules/knowledge.ts';
import type { App } from '../env.ts';
import { onlyThese } from '../methods.ts';
import { problemPage } from '../problem.ts';
import { quizFiles as words } from '../wording/quiz.en.ts';

/** GET /quiz/file: a set as a file to keep or to hand on. */
export function quizFileRoute(app: App): void {
  app.get(screens.file, (c) => {
    const fields = new URL(c.req.url).searchParams;
    const format = fields.get('format') ?? '';
    if (!isFormat(format)) return problemPage(c, 422, words.badFormat(format, formats));
    const built = setIn(knowledge, fields);
    if ('fault' in built) return problemPage(c, 422, built.fault);
    const { name, type, content } = fileOf(built.set, format);
    return c.body(content, 200, { 'Content-Type': type, 'Content-Disposition': `attachment; filename="${name}"` });
  });
  onlyThese(app, screens.file, ['GET']);
}
