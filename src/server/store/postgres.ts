import { Kysely, PostgresDialect } from 'kysely';
import pg from 'pg';
import { faultFrom } from './fault.ts';
import { kyselyStore } from './kysely-store.ts';
import { migrate } from './migrations.ts';
import type { Store } from './store.ts';
import type { Tables } from './tables.ts';

/** Opens the store in a PostgreSQL database, which many servers may share. `url` is a connection URI. */
export async function openPostgres(url: string): Promise<Store> {
  const pool = new pg.Pool({
    connectionString: url,
    max: 8,
    connectionTimeoutMillis: 5000,
    application_name: 'bladehand',
    // Acknowledged means on disk, whatever the database was set to.
    options: '-c synchronous_commit=on',
  });
  // A connection that is lost while it rests is replaced at the next use.
  pool.on('error', () => {});
  // One that is lost at work fails its query, which says so; unheard, the event would end the server.
  pool.on('connect', (client) => client.on('error', () => {}));
  const db = new Kysely<Tables>({ dialect: new PostgresDialect({ pool }) });
  try {
    await migrate(db, 'postgres');
    return kyselyStore(db, 'postgres', '');
  } catch (error) {
    await db.destroy().catch(() => {});
    throw faultFrom(error);
  }
}
