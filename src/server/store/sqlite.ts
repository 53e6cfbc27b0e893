import { mkdirSync } from 'node:fs';
import { dirname } from 'node:path';
import { Kysely, SqliteDialect } from 'kysely';
import Database from 'libsql';
import { faultFrom } from './fault.ts';
import { kyselyStore } from './kysely-store.ts';
import { migrate } from './migrations.ts';
import type { Store } from './store.ts';
import type { Tables } from './tables.ts';

/**
 * Opens the store in one SQLite file, made where there is none. The file is locked for as long as it is open, so a
 * second process is refused at once instead of running into the first one's writes. Every commit is synced to disk.
 */
export async function openSqlite(path: string): Promise<Store> {
  let database: Database.Database | undefined;
  try {
    mkdirSync(dirname(path), { recursive: true });
    database = new Database(path);
    // The lock is taken with the first read, and for good.
    for (const pragma of ['locking_mode = exclusive', 'journal_mode = wal', 'synchronous = full', 'foreign_keys = on'])
      database.prepare(`pragma ${pragma}`).all([]);
    database.exec('begin exclusive');
    database.exec('commit');
    const db = new Kysely<Tables>({ dialect: new SqliteDialect({ database: prepared(database) }) });
    await migrate(db, 'sqlite');
    return kyselyStore(db, 'sqlite', path);
  } catch (error) {
    database?.close();
    throw faultFrom(error, path);
  }
}

/** A database that prepares each text once. A transaction that the engine has rolled back by itself is not rolled back again. */
function prepared(database: Database.Database) {
  const statements = new Map<string, Database.Statement>();
  const nothing = { reader: false, run: () => ({ changes: 0, lastInsertRowid: 0 }), all: () => [], iterate: noRows };
  return {
    close: () => {
      // Statements that are not yet collected keep the connection, so the lock is let go by itself. What WAL holds goes
      // into the file first, which is then whole without any other.
      for (const pragma of ['journal_mode = delete', 'locking_mode = normal', 'user_version'])
        database.prepare(`pragma ${pragma}`).all([]);
      statements.clear();
      database.close();
    },
    prepare: (sql: string) => {
      if (sql === 'rollback' && !database.inTransaction) return nothing;
      const before = statements.get(sql);
      if (before) return before;
      const statement = database.prepare(sql);
      if (statements.size < mostStatements) statements.set(sql, statement);
      return statement;
    },
  };
}

const mostStatements = 200;

function* noRows(): IterableIterator<unknown> {}
