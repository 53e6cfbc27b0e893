import type { Kysely, Transaction } from 'kysely';
import type { Tables } from './tables.ts';

type Work<T> = (trx: Transaction<Tables>) => Promise<T>;

interface Waiting {
  readonly log: string;
  readonly run: (trx: Transaction<Tables>) => Promise<void>;
  readonly done: () => void;
  readonly fail: (error: unknown) => void;
}

/** Most pieces of work that share one commit. */
const mostTogether = 200;

/**
 * Writes one after another, and all that wait at the same time in one transaction: a hundred phones that save at once cost
 * one sync of the disk, not a hundred. Each promise resolves when its commit is done. Where a commit fails, each piece is
 * tried once more by itself, so that one bad write does not take the others with it.
 */
export function groupWriter(db: Kysely<Tables>): <T>(log: string, work: Work<T>) => Promise<T> {
  const waiting: Waiting[] = [];
  let running = false;

  const together = async (group: readonly Waiting[]): Promise<void> => {
    try {
      await db.transaction().execute(async (trx) => {
        for (const each of group) await each.run(trx);
      });
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
      // In the order of the logs' names: two servers that hold rows in one order never wait for each other in a ring.
      const group = waiting.splice(0, mostTogether).sort((a, b) => (a.log < b.log ? -1 : a.log > b.log ? 1 : 0));
      await together(group);
    }
    running = false;
  };

  return <T>(log: string, work: Work<T>) =>
    new Promise<T>((resolve, reject) => {
      let result: T;
      waiting.push({
        log,
        run: async (trx) => {
          result = await work(trx);
        },
        done: () => resolve(result),
        fail: reject,
      });
      if (!running) void run();
    });
}
