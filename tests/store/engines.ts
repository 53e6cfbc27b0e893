import { mkdtempSync } from 'node:fs';
import { rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import pg from 'pg';
import { describe, inject } from 'vitest';
import { openPostgres } from '../../src/server/store/postgres.ts';
import { openSqlite } from '../../src/server/store/sqlite.ts';
import type { Store } from '../../src/server/store/store.ts';

/** A place for one store, empty at first, that can be opened again and again. */
export interface Place {
  /** What the environment has to say for the server to find it. */
  readonly env: Readonly<Record<string, string>>;
  open(): Promise<Store>;
  clear(): Promise<void>;
}

export function sqlitePlace(): Place {
  const folder = mkdtempSync(join(tmpdir(), 'bladehand-store-'));
  return {
    env: { DATA: folder, DATABASE_URL: '' },
    open: () => openSqlite(join(folder, 'bladehand.db')),
    clear: () => rm(folder, { recursive: true, force: true }),
  };
}

let made = 0;

/** A database of its own on the server for tests. */
export async function postgresPlace(server: string): Promise<Place> {
  const name = `store_${process.pid}_${++made}`;
  const run = async (sql: string): Promise<void> => {
    const client = new pg.Client({ connectionString: server });
    await client.connect();
    await client.query(sql);
    await client.end();
  };
  await run(`create database ${name}`);
  const url = new URL(server.replace('@/', '@localhost/'));
  url.pathname = `/${name}`;
  const address = url.href.replace('@localhost/', '@/');
  return {
    env: { DATABASE_URL: address },
    open: () => openPostgres(address),
    clear: () => run(`drop database ${name} with (force)`),
  };
}

/** The same tests over both engines; those on PostgreSQL are skipped, and said so, where there is none. */
export function overBothEngines(suite: (engine: 'sqlite' | 'postgres', place: () => Promise<Place>) => void): void {
  const server = inject('postgres');
  describe('on SQLite', () => suite('sqlite', async () => sqlitePlace()));
  describe.skipIf(!server)('on PostgreSQL', () => suite('postgres', () => postgresPlace(server)));
}
