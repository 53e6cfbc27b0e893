import type { Kysely, Transaction } from 'kysely';
import { StoreFault } from './fault.ts';
import { linkFrom } from './rows.ts';
import type { Part } from './store.ts';
import type { EngineName, Tables } from './tables.ts';

const rowsAtOnce = 500;

/** Hands over everything, as it stands at one moment. */
export async function dump(db: Kysely<Tables>, engine: EngineName, take: (part: Part) => Promise<void>): Promise<void> {
  const transaction = engine === 'postgres' ? db.transaction().setIsolationLevel('repeatable read') : db.transaction();
  await transaction.execute(async (trx) => {
    const logs = await trx.selectFrom('log').select(['key', 'name', 'started_at']).orderBy('key').execute();
    for (const { key, name, started_at } of logs) {
      await take({ log: name, startedAt: started_at });
      for (let after = 0; ; after += rowsAtOnce) {
        const rows = await trx
          .selectFrom('entry')
          .select(['place', 'id', 'body', 'at'])
          .where('log', '=', key)
          .where('place', '>', after)
          .orderBy('place')
          .limit(rowsAtOnce)
          .execute();
        for (const { body, ...row } of rows) await take({ in: name, ...row, body: JSON.parse(body) });
        if (rows.length < rowsAtOnce) break;
      }
      const links = await trx.selectFrom('link').selectAll().where('log', '=', key).orderBy('made_at').execute();
      for (const row of links) await take({ link: linkFrom({ ...row, log: name }) });
    }
  });
}

/** Puts everything back in one transaction. */
export async function fill(db: Kysely<Tables>, parts: AsyncIterable<Part>, replace: boolean): Promise<void> {
  await db.transaction().execute(async (trx) => {
    const there = await trx.selectFrom('log').select('key').limit(1).executeTakeFirst();
    if (there && !replace) throw new StoreFault('notEmpty');
    for (const table of ['link', 'entry', 'log'] as const) await trx.deleteFrom(table).execute();
    const logs = new Map<string, Log>();
    let rows: Row[] = [];
    const flush = async (): Promise<void> => {
      if (rows.length > 0) await trx.insertInto('entry').values(rows).execute();
      rows = [];
    };
    for await (const part of parts) {
      if ('in' in part) {
        const log = known(logs, part.in);
        if (part.place !== ++log.length) throw new StoreFault('badBackup', { where: part.in });
        const { place, id, body, at } = part;
        rows.push({ log: log.key, place, id, body: JSON.stringify(body), at });
        if (rows.length >= rowsAtOnce) await flush();
      } else if ('link' in part) {
        const { hash, id, log, role, madeAt, revokedAt = null } = part.link;
        const { key } = known(logs, log);
        await trx
          .insertInto('link')
          .values({ hash, id, log: key, role, made_at: madeAt, revoked_at: revokedAt })
          .execute();
      } else logs.set(part.log, await startedAgain(trx, part.log, part.startedAt));
    }
    await flush();
    for (const { key, length } of logs.values())
      await trx.updateTable('log').set({ length }).where('key', '=', key).execute();
  });
}

interface Log {
  readonly key: number;
  length: number;
}
type Row = { log: number; place: number; id: string; body: string; at: string };

function known(logs: ReadonlyMap<string, Log>, name: string): Log {
  const log = logs.get(name);
  if (!log) throw new StoreFault('badBackup', { where: name });
  return log;
}

async function startedAgain(trx: Transaction<Tables>, name: string, at: string): Promise<Log> {
  const kind = name.slice(0, name.indexOf('/'));
  await trx.insertInto('log').values({ name, kind, length: 0, started_at: at }).execute();
  const { key } = await trx.selectFrom('log').select('key').where('name', '=', name).executeTakeFirstOrThrow();
  return { key, length: 0 };
}
