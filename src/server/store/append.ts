import { sql, type Transaction } from 'kysely';
import type { Entry, Receipt } from './store.ts';
import type { EngineName, Tables } from './tables.ts';

/** Entries for the end of one log. */
export interface Appending {
  readonly log: string;
  readonly kind: string;
  readonly entries: readonly Entry[];
  /** Most entries that the log may have. */
  readonly most: number;
}

/** A log's row, held against other servers until the transaction ends. */
export interface HeldLog {
  readonly key: number;
  readonly length: number;
}

type Trx = Transaction<Tables>;

/** Rows and parameters that go into one statement: SQLite takes 32,766 parameters. */
const atOnce = 1000;

/** The rows of logs by their names, each started where there is none, in one order whichever server asks. */
export async function held(
  trx: Trx,
  engine: EngineName,
  wanted: readonly { readonly log: string; readonly kind: string; readonly at: string }[],
): Promise<Map<string, HeldLog>> {
  const found = new Map<string, HeldLog>();
  const names = [...new Set(wanted.map(({ log }) => log))].sort();
  const select = async (some: readonly string[]): Promise<void> => {
    for (let at = 0; at < some.length; at += atOnce) {
      const query = trx
        .selectFrom('log')
        .select(['key', 'name', 'length'])
        .where('name', 'in', some.slice(at, at + atOnce))
        .orderBy('name');
      const rows = await (engine === 'postgres' ? query.forUpdate() : query).execute();
      for (const { key, name, length } of rows) found.set(name, { key, length });
    }
  };
  await select(names);
  const missing = names.filter((name) => !found.has(name));
  if (missing.length === 0) return found;
  const first = new Map([...wanted].reverse().map((each) => [each.log, each]));
  for (let at = 0; at < missing.length; at += atOnce)
    await trx
      .insertInto('log')
      .values(
        missing.slice(at, at + atOnce).map((name) => {
          const { kind, at: started } = first.get(name)!;
          return { name, kind, length: 0, started_at: started };
        }),
      )
      .onConflict((conflict) => conflict.column('name').doNothing())
      .execute();
  await select(missing);
  return found;
}

/**
 * Adds entries to the ends of many logs with a handful of statements, however many there are: what comes at the same time
 * waits for the database once, not once for each. Gives a receipt for each, in their order.
 */
export async function appendAll(trx: Trx, engine: EngineName, all: readonly Appending[]): Promise<Receipt[]> {
  const logs = await held(
    trx,
    engine,
    all.flatMap(({ log, kind, entries: [first] }) => (first ? [{ log, kind, at: first.at }] : [])),
  );
  const unstarted = [...new Set(all.map(({ log }) => log))].filter((log) => !logs.has(log));
  const lengths = new Map([...logs].map(([name, { length }]) => [name, length]));
  // Nothing is sent for these: they are asked for alone, and not started.
  for (let at = 0; at < unstarted.length; at += atOnce)
    for (const { name, length } of await trx
      .selectFrom('log')
      .select(['name', 'length'])
      .where('name', 'in', unstarted.slice(at, at + atOnce))
      .execute())
      lengths.set(name, length);
  const there = await bodiesOf(trx, logs, all);
  const rows: Tables['entry'][] = [];
  const receipts = all.map(({ log, entries, most }): Receipt => {
    const key = logs.get(log)?.key ?? 0;
    const had = lengths.get(log) ?? 0;
    const fresh: Tables['entry'][] = [];
    const differing: string[] = [];
    const mine = new Map<string, string>();
    for (const { id, body, at } of entries) {
      const text = JSON.stringify(body);
      const before = mine.get(id) ?? there.get(nameOf(key, id));
      if (before === undefined) {
        mine.set(id, text);
        fresh.push({ log: key, place: had + fresh.length + 1, id, body: text, at });
      } else if (before !== text) differing.push(id);
    }
    if (fresh.length > 0 && had + fresh.length > most) return { length: had, added: 0, differing: [], full: true };
    for (const [id, text] of mine) there.set(nameOf(key, id), text);
    lengths.set(log, had + fresh.length);
    for (const row of fresh) rows.push(row);
    return { length: had + fresh.length, added: fresh.length, differing };
  });
  for (let at = 0; at < rows.length; at += atOnce)
    await trx
      .insertInto('entry')
      .values(rows.slice(at, at + atOnce))
      .execute();
  const grown = [...logs].filter(([name, { length }]) => lengths.get(name) !== length);
  if (grown.length > 0)
    await setLengths(
      trx,
      grown.map(([name, { key }]) => [key, lengths.get(name)!] as const),
    );
  return receipts;
}

const nameOf = (key: number, id: string): string => `${key} ${id}`;

/** Those of the entries that are there already, by log and id. */
async function bodiesOf(
  trx: Trx,
  logs: ReadonlyMap<string, HeldLog>,
  all: readonly Appending[],
): Promise<Map<string, string>> {
  const there = new Map<string, string>();
  // A log that has just been started has none.
  const pairs = all.flatMap(({ log, entries }) => {
    const row = logs.get(log);
    return row && row.length > 0 ? entries.map(({ id }) => [row.key, id] as const) : [];
  });
  for (let at = 0; at < pairs.length; at += atOnce) {
    const byLog = new Map<number, string[]>();
    for (const [key, id] of pairs.slice(at, at + atOnce)) byLog.set(key, [...(byLog.get(key) ?? []), id]);
    const rows = await trx
      .selectFrom('entry')
      .select(['log', 'id', 'body'])
      .where(({ eb, or, and }) => or([...byLog].map(([key, ids]) => and([eb('log', '=', key), eb('id', 'in', ids)]))))
      .execute();
    for (const { log, id, body } of rows) there.set(nameOf(log, id), body);
  }
  return there;
}

async function setLengths(trx: Trx, lengths: readonly (readonly [key: number, length: number])[]): Promise<void> {
  const cases = sql.join(
    lengths.map(([key, length]) => sql`when ${sql.lit(key)} then ${sql.lit(length)}`),
    sql` `,
  );
  await trx
    .updateTable('log')
    .set({ length: sql<number>`case key ${cases} else length end` })
    .where(
      'key',
      'in',
      lengths.map(([key]) => key),
    )
    .execute();
}
