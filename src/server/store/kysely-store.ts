import type { Kysely } from 'kysely';
import { appendAll, held } from './append.ts';
import { dump, fill } from './dump.ts';
import { faultFrom, StoreFault } from './fault.ts';
import { gathered } from './gathered.ts';
import { type Reading, readLogs } from './read-logs.ts';
import { linkFrom } from './rows.ts';
import type { LogListed, Store } from './store.ts';
import type { EngineName, Tables } from './tables.ts';
import { groupWriter } from './writer.ts';

/** The store over one set of tables; both engines share every line of it. */
export function kyselyStore(db: Kysely<Tables>, engine: EngineName, where: string): Store {
  const { write, append } = groupWriter(db, (trx, all) => appendAll(trx, engine, all));
  const read = gathered((readings: readonly Reading[]) => readLogs(db, readings));
  const link = gathered(async (hashes: readonly string[]) => {
    const rows = await linkRows(db)
      .where('link.hash', 'in', [...new Set(hashes)])
      .execute();
    const byHash = new Map(rows.map((row) => [row.hash, linkFrom(row)]));
    return hashes.map((hash) => byHash.get(hash));
  });
  /** Runs a piece of work, its errors worded. */
  const worded = async <T>(work: () => Promise<T>): Promise<T> => {
    try {
      return await work();
    } catch (error) {
      throw faultFrom(error, where);
    }
  };
  const keyOf = async (name: string): Promise<number | undefined> =>
    (await db.selectFrom('log').select('key').where('name', '=', name).executeTakeFirst())?.key;

  return {
    append: (log, entries, most = Number.POSITIVE_INFINITY) =>
      worded(() => append({ log, kind: kindOf(log), entries, most })),
    read: (log, after, most) => worded(() => read({ log, after, most })),
    length: (log) =>
      worded(
        async () =>
          (await db.selectFrom('log').select('length').where('name', '=', log).executeTakeFirst())?.length ?? 0,
      ),
    logs: (kind, after, most) =>
      worded(async () => {
        const from = after === '' ? 0 : ((await keyOf(after)) ?? 0);
        const rows = await db
          .selectFrom('log')
          .select(['name', 'length', 'started_at'])
          .where('kind', '=', kind)
          .where('key', '>', from)
          .orderBy('key')
          .limit(most)
          .execute();
        return rows.map(({ name, length, started_at }): LogListed => ({ log: name, length, startedAt: started_at }));
      }),
    erase: (log) =>
      worded(async () => {
        await write(log, (trx) => trx.deleteFrom('log').where('name', '=', log).execute());
      }),
    addLink: (link) =>
      worded(() =>
        write(link.log, async (trx) => {
          const { log, madeAt: at } = link;
          const { key } = (await held(trx, engine, [{ log, kind: kindOf(log), at }])).get(log)!;
          const { hash, id, role, madeAt, revokedAt = null } = link;
          await trx
            .insertInto('link')
            .values({ hash, id, log: key, role, made_at: madeAt, revoked_at: revokedAt })
            .execute();
        }),
      ),
    link: (hash) => worded(() => link(hash)),
    links: (log) =>
      worded(async () =>
        (await linkRows(db).where('log.name', '=', log).orderBy('link.made_at').orderBy('link.id').execute()).map(
          linkFrom,
        ),
      ),
    revoke: (log, id, at) =>
      worded(() =>
        write(log, async (trx) => {
          const key = await trx.selectFrom('log').select('key').where('name', '=', log).executeTakeFirst();
          if (!key) return false;
          const { numUpdatedRows } = await trx
            .updateTable('link')
            .set({ revoked_at: at })
            .where('log', '=', key.key)
            .where('id', '=', id)
            .where('revoked_at', 'is', null)
            .executeTakeFirst();
          if (numUpdatedRows > 0n) return true;
          const there = await trx
            .selectFrom('link')
            .select('id')
            .where('log', '=', key.key)
            .where('id', '=', id)
            .executeTakeFirst();
          return there !== undefined;
        }),
      ),
    dump: (take) => worded(() => dump(db, engine, take)),
    fill: (parts, replace) => worded(() => fill(db, parts, replace)),
    close: () => worded(() => db.destroy()),
  };
}

/** The kind in a log's name. Throws for what is no name. */
export function kindOf(log: string): string {
  const kind = /^([a-z]{1,20})\/[A-Za-z0-9_-]{1,100}$/.exec(log)?.[1];
  if (kind === undefined) throw new StoreFault('badName');
  return kind;
}

function linkRows(db: Kysely<Tables>) {
  return db
    .selectFrom('link')
    .innerJoin('log', 'log.key', 'link.log')
    .select(['link.hash', 'link.id', 'log.name as log', 'link.role', 'link.made_at', 'link.revoked_at']);
}
