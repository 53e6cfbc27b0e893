import { afterAll, beforeAll } from 'vitest';
import { ask } from '../../src/ask/ask.ts';
import { createApp } from '../../src/server/app.ts';
import type { Store } from '../../src/server/store/store.ts';
import { sqlitePlace } from '../store/engines.ts';

/** The server on a store of its own for the tests of one file, that store, and what it reported. */
export function appOnStore(asking: Parameters<typeof createApp>[0]['ask'] = ask) {
  const place = sqlitePlace();
  const reports: string[] = [];
  let store: Store;
  beforeAll(async () => {
    store = await place.open();
  });
  afterAll(async () => {
    await store.close();
    await place.clear();
  });
  const app = createApp({ ask: asking, report: (line) => reports.push(line), store: async () => store });
  return { app, reports, store: () => store };
}
