import { workedOut } from '../../ask/book/at-hand.ts';
import { dayRecord } from '../../ask/book/day.ts';
import { isDate } from '../../ask/book/read-change.ts';
import { seasonOf } from '../../ask/book/season.ts';
import { systemOfSheet } from '../../ask/book/sheet.ts';
import { bookToCsv } from '../../ask/book/whole-csv.ts';
import { bookToJson } from '../../ask/book/whole-json.ts';
import { engine } from '../../ask/engine.ts';
import { dayPage } from '../../ask/views/book/day.tsx';
import { seasonPage } from '../../ask/views/book/season.tsx';
import type { Doors } from '../doors.ts';
import { dress } from '../dress.ts';
import type { App } from '../env.ts';
import { fieldsOf } from '../form.ts';
import { changesOf, openJob } from '../job/job.ts';
import { withJob } from '../job/with-job.ts';
import { onlyThese } from '../methods.ts';
import { answerNothingHere } from '../problem.ts';

/** Most other jobs a season is made of. */
const mostJobs = 50;

/** What is made from a job: the record of a day, the season, and files to keep. */
export function jobFileRoutes(app: App, doors: Doors): void {
  const { version } = doors;
  app.get('/job/:key/day/:day', (c) =>
    withJob(doors, async (store, opened, address) => {
      const day = c.req.param('day');
      if (!isDate(day)) return answerNothingHere(c);
      const { sheet, totals } = workedOut(await changesOf(store, opened.log));
      return c.html(dayPage({ address, sheet, record: dayRecord(sheet, totals, day), version, dress }), 200, {
        'Content-Language': 'en',
      });
    })(c),
  );
  onlyThese(app, '/job/:key/day/:day', ['GET']);

  const season = (c: Parameters<ReturnType<typeof withJob>>[0]) =>
    withJob(doors, async (store, opened, address) => {
      const fields = c.req.method === 'POST' ? await fieldsOf(c) : undefined;
      const links = String(fields?.get('links') ?? '')
        .split(/\s+/)
        .filter(Boolean)
        .slice(0, mostJobs);
      const logs = new Set([opened.log]);
      let unread = 0;
      for (const link of links) {
        const other = await openJob(store, link.split('/').at(-1) ?? '');
        if (other && other !== 'revoked') logs.add(other.log);
        else unread++;
      }
      const jobs = await Promise.all([...logs].map(async (log) => workedOut(await changesOf(store, log))));
      const metric = systemOfSheet(jobs[0]!.sheet) === 'metric';
      return c.html(seasonPage({ address, roads: seasonOf(jobs), metric, unread, version, dress }), 200, {
        'Content-Language': 'en',
      });
    })(c);
  app.get('/job/:key/season', season);
  app.post('/job/:key/season', season);
  onlyThese(app, '/job/:key/season', ['GET', 'POST']);

  app.get('/job/:key/export.csv', (c) =>
    withJob(doors, async (store, opened) => {
      const { book } = workedOut(await changesOf(store, opened.log));
      return c.body(`\uFEFF${bookToCsv(book, engine.knowledge)}`, 200, {
        'Content-Type': 'text/csv; charset=utf-8',
        'Content-Disposition': 'attachment; filename="job.csv"',
      });
    })(c),
  );
  onlyThese(app, '/job/:key/export.csv', ['GET']);
  app.get('/job/:key/export.json', (c) =>
    withJob(doors, async (store, opened) =>
      c.body(bookToJson(await changesOf(store, opened.log)), 200, {
        'Content-Type': 'application/json',
        'Content-Disposition': 'attachment; filename="job.json"',
      }),
    )(c),
  );
  onlyThese(app, '/job/:key/export.json', ['GET']);
}
