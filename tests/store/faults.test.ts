import { spawn } from 'node:child_process';
import { chmod, mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import Database from 'libsql';
import pg from 'pg';
import { describe, expect, inject, test } from 'vitest';
import { lazyStore } from '../../src/server/store/open.ts';
import { openPostgres } from '../../src/server/store/postgres.ts';
import type { Entry, Receipt } from '../../src/server/store/store.ts';
import { type Place, postgresPlace, sqlitePlace } from './engines.ts';

const entry = (id: string, body: unknown = id): Entry => ({ id, body, at: '2026-04-02T07:30:00.000Z' });

/** Runs one of the two commands, as a process of its own. */
function command(args: readonly string[], place: Place): Promise<{ code: number | null; out: string; err: string }> {
  return new Promise((resolve) => {
    const child = spawn(process.execPath, ['scripts/run.mjs', ...args], { env: { ...process.env, ...place.env } });
    const said = { out: '', err: '' };
    child.stdout.on('data', (chunk) => {
      said.out += chunk;
    });
    child.stderr.on('data', (chunk) => {
      said.err += chunk;
    });
    child.on('close', (code) => resolve({ code, ...said }));
  });
}

describe('backup and restore as commands', () => {
  test('write a file and bring it back, and say what they did', async () => {
    const [from, to] = [sqlitePlace(), sqlitePlace()];
    const store = await from.open();
    await store.append('job/a', [entry('x'), entry('y')]);
    await store.close();
    const file = join(from.env.DATA!, 'b.jsonl');
    expect(await command(['backup', file], from)).toEqual({
      code: 0,
      out: `Wrote ${file}: 1 log, 2 entries.\n`,
      err: '',
    });
    expect(await command(['backup', file], from)).toMatchObject({
      code: 2,
      err: `${file} is there already. Name a new file.\n`,
    });
    expect(await command(['restore', file], to)).toMatchObject({ code: 0, out: 'Brought back 1 log, 2 entries.\n' });
    const second = await command(['restore', file], to);
    expect(second.code).toBe(1);
    expect(second.err).toMatch(/something in the store already.*--replace/);
    expect(await command(['restore', file, '--replace'], to)).toMatchObject({ code: 0 });
    expect((await command(['restore', `${file}.none`], to)).code).toBe(2);
    expect((await command(['backup'], to)).err).toMatch(/^Name one file\./);
    for (const place of [from, to]) await place.clear();
  });

  test('are refused while another process holds the file, and that one loses nothing', async () => {
    const place = sqlitePlace();
    const store = await place.open();
    await store.append('job/a', [entry('x')]);
    const { code, err } = await command(['backup', join(place.env.DATA!, 'b.jsonl')], place);
    expect([code, err]).toEqual([
      1,
      expect.stringMatching(/^Another program holds the store .*stop that one first\.\n$/),
    ]);
    await store.append('job/a', [entry('y')]);
    await store.close();
    const again = await place.open();
    expect(await again.length('job/a')).toBe(2);
    await again.close();
    await place.clear();
  });
});

describe('a file that cannot be used', () => {
  test.each([
    [
      'text',
      async (file: string): Promise<void> => writeFile(file, 'this is no database, it is a letter'.repeat(99)),
      'damaged',
    ],
    ['a folder', async (file: string): Promise<void> => void (await mkdir(file)), 'unopened'],
  ] as const)('%s: said in plain words, and not touched', async (_what, make, kind) => {
    const place = sqlitePlace();
    await make(join(place.env.DATA!, 'bladehand.db'));
    await expect(place.open()).rejects.toMatchObject({ name: 'StoreFault', kind });
    await place.clear();
  });

  test.skipIf(process.getuid?.() === 0)('one that may not be written to', async () => {
    const place = sqlitePlace();
    await (await place.open()).close();
    await chmod(join(place.env.DATA!, 'bladehand.db'), 0o400);
    await expect(place.open()).rejects.toMatchObject({ kind: 'unwritable' });
    await place.clear();
  });

  test('one that a newer version wrote is left as it is', async () => {
    const place = sqlitePlace();
    await (await place.open()).close();
    const raw = new Database(join(place.env.DATA!, 'bladehand.db'));
    raw.exec(`insert into kysely_migration values ('2099-01-01-rings', '2099-01-01')`);
    raw.close();
    await expect(place.open()).rejects.toMatchObject({ kind: 'newer' });
    await place.clear();
  });
});

describe('a disk that is full', () => {
  // A process whose files may not grow past a size meets the same refusal as on a full disk.
  const script = `
    const { createRequire } = require('node:module');
    (async () => {
      const { openStore } = await import(process.argv[1]);
      const store = await openStore({ folder: process.argv[2] });
      const at = '2026-04-02T07:30:00.000Z';
      let kept = 0;
      let said;
      for (let i = 0; i < 5000 && !said; i++)
        await store.append('job/a', [{ id: 'e' + i, body: 'x'.repeat(500), at }]).then(() => kept++, (fault) => { said = fault; });
      const read = await store.read('job/a', 0, 10).then((page) => page.length, () => 'nothing');
      console.log(JSON.stringify({ kept, kind: said && said.kind, text: said && said.message, read }));
      process.exit(0);
    })();`;

  test('is said, nothing kept is lost, and what was there can still be read', async () => {
    const { build } = await import('esbuild');
    const place = sqlitePlace();
    const bundle = join(process.cwd(), 'node_modules', '.cache', `store-${process.pid}.mjs`);
    await build({
      entryPoints: ['src/server/store/open.ts'],
      outfile: bundle,
      bundle: true,
      platform: 'node',
      format: 'esm',
      packages: 'external',
    });
    const { out, err } = await new Promise<{ out: string; err: string }>((resolve) => {
      const child = spawn('sh', [
        '-c',
        'ulimit -f 600; exec "$0" "$@"',
        process.execPath,
        '-e',
        script,
        bundle,
        place.env.DATA!,
      ]);
      const said = { out: '', err: '' };
      child.stdout.on('data', (chunk) => {
        said.out += chunk;
      });
      child.stderr.on('data', (chunk) => {
        said.err += chunk;
      });
      child.on('close', () => resolve(said));
    });
    expect(err).toBe('');
    const { kept, kind, text, read } = JSON.parse(out);
    expect(['full', 'io']).toContain(kind);
    expect(text).toMatch(/kept/);
    expect(read).toBe(Math.min(10, kept));
    expect(kept).toBeGreaterThan(5);
    const store = await place.open();
    expect(await store.length('job/a')).toBeGreaterThanOrEqual(kept);
    expect((await store.read('job/a', 0, kept)).map(({ id }) => id)).toEqual(
      Array.from({ length: kept }, (_, i) => `e${i}`),
    );
    await store.close();
    await place.clear();
  });
});

describe('a database server', () => {
  test('that is not there is said so', async () => {
    await expect(openPostgres('postgresql://x@127.0.0.1:1/none')).rejects.toMatchObject({ kind: 'unreachable' });
  });

  test.skipIf(!inject('postgres'))('that does not know the database is said so', async () => {
    const url = inject('postgres').replace('/postgres?', '/no_such_database?');
    await expect(openPostgres(url)).rejects.toMatchObject({ kind: 'refused' });
  });

  test.skipIf(!inject('postgres'))('that cuts the connections is reached again by itself', async () => {
    const place = await postgresPlace(inject('postgres'));
    const store = await place.open();
    await store.append('job/a', [entry('x')]);
    const client = new pg.Client({ connectionString: inject('postgres') });
    await client.connect();
    const database = new URL(place.env.DATABASE_URL!.replace('@/', '@localhost/')).pathname.slice(1);
    await client.query('select pg_terminate_backend(pid) from pg_stat_activity where datname = $1', [database]);
    await client.end();
    const send = (): Promise<Receipt> => store.append('job/a', [entry('y')]);
    // Each connection that rested may fail once before it is replaced.
    await send().catch(send).catch(send);
    expect(await store.length('job/a')).toBe(2);
    await store.close();
    await place.clear();
  });

  test.skipIf(!inject('postgres'))(
    'is shared by two servers: both write to one log, and no place is given twice',
    async () => {
      const place = await postgresPlace(inject('postgres'));
      const [one, other] = [await place.open(), await place.open()];
      await Promise.all(
        Array.from({ length: 200 }, (_, i) => (i % 2 ? one : other).append(`job/${i % 5}`, [entry(`e${i}`)])),
      );
      for (let i = 0; i < 5; i++)
        expect((await one.read(`job/${i}`, 0, 99)).map((kept) => kept.place)).toEqual(
          Array.from({ length: 40 }, (_, n) => n + 1),
        );
      for (const store of [one, other]) await store.close();
      await place.clear();
    },
  );
});

describe('a store that is opened when it is first wanted', () => {
  test('is opened once, and after a failure the next one tries again', async () => {
    const place = sqlitePlace();
    let tries = 0;
    const lazy = lazyStore(async () => {
      if (++tries === 1) throw new Error('not yet');
      return place.open();
    });
    await expect(lazy.get()).rejects.toThrow('not yet');
    const [a, b] = await Promise.all([lazy.get(), lazy.get()]);
    expect(a).toBe(b);
    expect(tries).toBe(2);
    await lazy.close();
    await (await place.open()).close();
    await place.clear();
  });
});
