import { join, resolve } from 'node:path';
import { fromRoot } from '../root.ts';
import type { Store } from './store.ts';

/** Where a store is: the folder of its file, or the address of a database server, which goes first. */
export interface StorePlace {
  readonly folder?: string | undefined;
  readonly url?: string | undefined;
}

/** What the environment says: DATABASE_URL, else DATA, else the folder `data` of the program. */
export const placeFrom = (env: Readonly<Record<string, string | undefined>>): StorePlace => ({
  url: env.DATABASE_URL || undefined,
  folder: env.DATA || undefined,
});

/** Opens the store there. The engine is loaded only now: a server that is only asked questions never pays for it. */
export async function openStore({ url, folder }: StorePlace): Promise<Store> {
  if (url) return (await import('./postgres.ts')).openPostgres(url);
  const file = join(folder ? resolve(folder) : fromRoot('data'), 'bladehand.db');
  return (await import('./sqlite.ts')).openSqlite(file);
}

/** A store that is opened when it is first wanted, once; where that fails, the next one who wants it tries again. */
export interface LazyStore {
  get(): Promise<Store>;
  /** Closes it if it was opened. */
  close(): Promise<void>;
}

export function lazyStore(open: () => Promise<Store>): LazyStore {
  let opened: Promise<Store> | undefined;
  return {
    get() {
      opened ??= open().catch((fault) => {
        opened = undefined;
        throw fault;
      });
      return opened;
    },
    async close() {
      const store = await opened?.catch(() => undefined);
      opened = undefined;
      await store?.close();
    },
  };
}
