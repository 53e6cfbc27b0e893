import { type Kysely, type Migration, Migrator } from 'kysely';
import { StoreFault } from './fault.ts';
import type { EngineName, Tables } from './tables.ts';

/** Every step the tables took, in order of their names. A step that has run anywhere is never changed: add another. */
function steps(engine: EngineName): Record<string, Migration> {
  return {
    '2026-11-25-logs': {
      async up(db) {
        await db.schema
          .createTable('log')
          .addColumn('key', 'integer', (column) =>
            engine === 'sqlite' ? column.primaryKey().autoIncrement() : column.primaryKey().generatedAlwaysAsIdentity(),
          )
          .addColumn('name', 'text', (column) => column.notNull().unique())
          .addColumn('kind', 'text', (column) => column.notNull())
          .addColumn('length', 'integer', (column) => column.notNull())
          .addColumn('started_at', 'text', (column) => column.notNull())
          .execute();
        await db.schema.createIndex('log_of_kind').on('log').columns(['kind', 'key']).execute();
        await db.schema
          .createTable('entry')
          .addColumn('log', 'integer', (column) => column.notNull().references('log.key').onDelete('cascade'))
          .addColumn('place', 'integer', (column) => column.notNull())
          .addColumn('id', 'text', (column) => column.notNull())
          .addColumn('body', 'text', (column) => column.notNull())
          .addColumn('at', 'text', (column) => column.notNull())
          .addPrimaryKeyConstraint('entry_at_place', ['log', 'place'])
          .addUniqueConstraint('entry_by_id', ['log', 'id'])
          .execute();
        await db.schema
          .createTable('link')
          .addColumn('hash', 'text', (column) => column.primaryKey())
          .addColumn('id', 'text', (column) => column.notNull())
          .addColumn('log', 'integer', (column) => column.notNull().references('log.key').onDelete('cascade'))
          .addColumn('role', 'text', (column) => column.notNull())
          .addColumn('made_at', 'text', (column) => column.notNull())
          .addColumn('revoked_at', 'text')
          .addUniqueConstraint('link_by_id', ['log', 'id'])
          .execute();
      },
    },
  };
}

/** Brings the tables up to this version of the program. Rejects, touching nothing, where a newer one has been here. */
export async function migrate(db: Kysely<Tables>, engine: EngineName): Promise<void> {
  const own = steps(engine);
  const migrator = new Migrator({ db, provider: { getMigrations: async () => own } });
  const done = await stepsDone(db);
  if (done.some((name) => !(name in own))) throw new StoreFault('newer');
  const { error } = await migrator.migrateToLatest();
  if (error) throw error;
}

async function stepsDone(db: Kysely<Tables>): Promise<string[]> {
  const tables = await db.introspection.getTables({ withInternalKyselyTables: true });
  if (!tables.some(({ name }) => name === 'kysely_migration')) return [];
  const rows = await (db as unknown as Kysely<{ kysely_migration: { name: string } }>)
    .selectFrom('kysely_migration')
    .select('name')
    .execute();
  return rows.map(({ name }) => name);
}
