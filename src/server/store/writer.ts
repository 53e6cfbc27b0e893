import type { Kysely, Transaction } from 'kysely';
import type { Appending } from './append.ts';
import type { Receipt } from './store.ts';
import type { Tables } from './tables.ts';

type Work<T> = (trx: Transaction<Tables>) => Promise<T>;
type AppendAll = (trx: Transaction<Tables>, all: readonly Appending[]) => Promise<Receipt[]>;

interface Waiting {
  readonly log: string;
  /** Entries to append, which go together with those beside them; else a piece of work of its own. */
  readonly appending?: Appending;
  readonly run: (trx: Transaction<Tables>) => Promise<void>;
  readonly take: (receipt: Receipt) => void;
  readonly done: () => void;
  readonly fail: (error: unknown) => void;
}

export interface GroupWriter {
  write<T>(log: string, work: Work<T>): Promise<T>;
  append(appending: Appending): Promise<Receipt>;
}

/** Most pieces of work that share one commit. */
const mostTogether = 200;

/**
 * Writes one after another, and all that wait at the same time in one transaction, entries that are appended with the same
 * few statements: a hundred phones that save at once cost one sync of the disk and one wait for the database, not a
 * hundred. Each promise resolves when its commit is done. Where a commit fails, each piece is tried once more by itself,
 * so that one bad write does not take the others with it.
 */
export function groupWriter(db: Kysely<Tables>, appendAll: AppendAll): GroupWriter {
  const waiting: Waiting[] = [];
  let running = false;

  const work = async (trx: Transaction<Tables>, group: readonly Waiting[]): Promise<void> => {
    for (let at = 0; at < group.length; ) {
      const end = group.findIndex(({ appending }, i) => i >= at && !appending);
      const together = group.slice(at, end < 0 ? group.length : end);
      if (together.length > 0) {
        const receipts = await appendAll(
          trx,
          together.map(({ appending }) => appending!),
        );
        for (const [i, each] of together.entries()) each.take(receipts[i]!);
        at += together.length;
      } else await group[at++]!.run(trx);
    }
  };

  const together = async (group: readonly Waiting[]): Promise<void> => {
    try {
      await db.transaction().execute((trx) => work(trx, group));
    } catch (error) {
      if (group.length === 1) return group[0]!.fail(error);
      for (const each of group) await together([each]);
      return;
    }
    for (const each of group) each.done();
  };

  const run = async (): Promise<void> => {
    running = true;
    while (waiting.length > 0) {
      // What lies on the sockets is read first: an engine that works in this very process keeps it waiting while it syncs.
      await new Promise((resolve) => setImmediate(resolve));
      // In the order of the logs' names: two servers that hold rows in one order never wait for each other in a ring.
      const group = waiting.splice(0, mostTogether).sort((a, b) => (a.log < b.log ? -1 : a.log > b.log ? 1 : 0));
      await together(group);
    }
    running = false;
  };

  const put = <T>(log: string, appending: Appending | undefined, work: Work<T>): Promise<T> =>
    new Promise<T>((resolve, reject) => {
      let result: T;
      waiting.push({
        log,
        ...(appending ? { appending } : {}),
        run: async (trx) => {
          result = await work(trx);
        },
        take: (receipt) => {
          result = receipt as T;
        },
        done: () => resolve(result),
        fail: reject,
      });
      if (!running) void run();
    });

  return {
    write: (log, work) => put(log, undefined, work),
    append: (appending) => put<Receipt>(appending.log, appending, () => Promise.reject(new Error('appended alone'))),
  };
}
