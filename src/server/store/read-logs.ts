import type { Kysely } from 'kysely';
import type { KeptEntry } from './store.ts';
import type { Tables } from './tables.ts';

/** What is asked of a log: its entries after a place, so many at most. */
export interface Reading {
  readonly log: string;
  readonly after: number;
  readonly most: number;
}

/** Logs that one statement reads. */
const atOnce = 20;

/** Answers what is asked of many logs, those that are asked for one log from one reading of it. */
export async function readLogs(db: Kysely<Tables>, readings: readonly Reading[]): Promise<KeptEntry[][]> {
  const wanted = new Map<string, { after: number; most: number }>();
  for (const { log, after, most } of readings) {
    const before = wanted.get(log);
    wanted.set(log, {
      after: Math.min(after, before?.after ?? after),
      most: Math.max(most, before?.most ?? most),
    });
  }
  const found = await rowsOf(db, [...wanted]);
  return Promise.all(
    readings.map(async ({ log, after, most }) => {
      const { most: limit } = wanted.get(log)!;
      const all = found.get(log) ?? [];
      const own = all.filter(({ place }) => place > after).slice(0, most);
      // More was there than the shared reading reached: this one is read by itself.
      const isShort = all.length >= limit && own.length < most;
      return isShort ? ((await rowsOf(db, [[log, { after, most }]])).get(log) ?? []) : own;
    }),
  );
}

type Wanted = readonly (readonly [log: string, { readonly after: number; readonly most: number }])[];

async function rowsOf(db: Kysely<Tables>, wanted: Wanted): Promise<Map<string, KeptEntry[]>> {
  const found = new Map<string, KeptEntry[]>();
  for (let at = 0; at < wanted.length; at += atOnce) {
    const parts = wanted
      .slice(at, at + atOnce)
      .map(([log, { after, most }]) =>
        db
          .selectFrom((from) =>
            from
              .selectFrom('entry')
              .innerJoin('log', 'log.key', 'entry.log')
              .select(['log.name as log', 'entry.place', 'entry.id', 'entry.body', 'entry.at'])
              .where('log.name', '=', log)
              .where('entry.place', '>', after)
              .orderBy('entry.place')
              .limit(most)
              .as('part'),
          )
          .selectAll(),
      );
    const [first, ...others] = parts;
    if (!first) break;
    const rows = await others.reduce((query, part) => query.unionAll(part), first).execute();
    for (const { log, body, place, id, at: taken } of rows) {
      const entries = found.get(log) ?? [];
      if (entries.length === 0) found.set(log, entries);
      entries.push({ place, id, body: JSON.parse(body), at: taken });
    }
  }
  for (const entries of found.values()) entries.sort((a, b) => a.place - b.place);
  return found;
}
