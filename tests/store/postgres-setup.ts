import type { TestProject } from 'vitest/node';
import { postgresPrograms, startPostgres } from './postgres.ts';

declare module 'vitest' {
  export interface ProvidedContext {
    /** Address of a PostgreSQL database for tests; empty where there is none. */
    postgres: string;
  }
}

/** A real PostgreSQL for the tests of the store: the one named in TEST_DATABASE_URL, else one of our own where it is installed. */
export default async function setup({ provide }: TestProject): Promise<() => Promise<void>> {
  const given = process.env.TEST_DATABASE_URL;
  const programs = given ? undefined : postgresPrograms();
  if (!given && !programs) {
    process.stderr.write(
      '\n*** NOT TESTED: the store on PostgreSQL. It is not installed here (Debian: apt-get install postgresql).\n' +
        '*** Its tests are skipped; those on SQLite run.\n\n',
    );
    provide('postgres', '');
    return async () => {};
  }
  const server = programs ? await startPostgres(programs) : undefined;
  provide('postgres', given ?? server!.url);
  return async () => server?.stop();
}
