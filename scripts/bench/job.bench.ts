import { mkdtempSync, rmSync } from 'node:fs';
import { Agent, request } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fold } from '../../src/ask/book/book.ts';
import { type Cell, type Change, stampAfter } from '../../src/ask/book/change.ts';
import { sheetOf } from '../../src/ask/book/sheet.ts';
import { totalsOf } from '../../src/ask/book/totals.ts';
import { engine } from '../../src/ask/engine.ts';
import { postgresPrograms, startPostgres } from '../../tests/store/postgres.ts';
import { type Figures, median, ms, p99, timeEach } from './measure.ts';
import { startServer } from './process.ts';

/** A hundred phones on ten jobs, each with a change to send every fifth of a second, signal or not: 500 a second. */
const clients = 100;
const jobs = 10;
const every = 200;
const lasts = 5000;

/** A job of 500 patches worked out from its changes; changes a second through the route that phones sync by, on both engines. */
export async function run(): Promise<Figures> {
  const figures = { ...(await derived()), ...(await synced('SQLite', {})) };
  const programs = postgresPrograms();
  if (!programs) {
    process.stderr.write('PostgreSQL is not installed here, so syncing was measured on SQLite alone.\n');
    return figures;
  }
  const database = await startPostgres(programs);
  try {
    return { ...figures, ...(await synced('PostgreSQL', { DATABASE_URL: database.url })) };
  } finally {
    await database.stop();
  }
}

async function derived(): Promise<Figures> {
  const changes = Array.from({ length: 500 }, (_, i) => patch(i));
  const book = fold(changes);
  const sheet = sheetOf(book, engine.knowledge);
  const { whole, folded, read, totals } = await timeEach(
    {
      whole: () => totalsOf(engine, sheetOf(fold(changes), engine.knowledge)),
      folded: () => fold(changes),
      read: () => sheetOf(book, engine.knowledge),
      totals: () => totalsOf(engine, sheet),
    },
    { warmUp: 30, rounds: 200 },
  );
  return {
    'job of 500 patches median': ms(median(whole)),
    'job of 500 patches p99': ms(p99(whole)),
    'job of 500 patches, its changes folded, median': ms(median(folded)),
    'job of 500 patches, read, median': ms(median(read)),
    'job of 500 patches, worked out, median': ms(median(totals)),
  };
}

const is = (number: number, unit: string): Cell => ({ number, unit }) as Cell;

function patch(i: number): Change {
  return {
    id: stampAfter(undefined, i, 'phone1'),
    line: `patch/p${i}`,
    set: {
      label: String(i + 1),
      station: `${i + 10}+00`,
      'patch-length': is(100 + i, 'ft'),
      'patch-width': is(10 + (i % 4), 'ft'),
      'patch-depth': is(1 + (i % 5) / 2, 'in'),
      ...(i % 3 ? {} : { defect: 'rutting' }),
    },
  };
}

async function synced(name: string, env: Readonly<Record<string, string>>): Promise<Figures> {
  const folder = mkdtempSync(join(tmpdir(), 'bladehand-bench-'));
  const server = await startServer(['scripts/run.mjs', 'start'], { DATA: folder, DATABASE_URL: '', ...env });
  const agent = new Agent({ keepAlive: true, maxSockets: clients });
  try {
    const keys = Array.from({ length: jobs }, (_, i) => `bench-${i}`.padEnd(22, 'k'));
    for (const key of keys) await send(agent, server.port, key, { changes: [], after: 0, begin: true });
    const times: number[] = [];
    const start = performance.now() + 500;
    await Promise.all(
      Array.from({ length: clients }, async (_, client) => {
        let after = 0;
        for (let turn = 0; turn * every < lasts; turn++) {
          // Late ones are not sent later for it: the wait counts from when it was due.
          const due = start + turn * every + (client * every) / clients;
          await new Promise((resolve) => setTimeout(resolve, Math.max(0, due - performance.now())));
          const id = stampAfter(undefined, turn, `client${client}`);
          const change = { id, line: `load/c${client}-${turn}`, set: { 'placed-mass': is(12, 'ton') } };
          after = await send(agent, server.port, keys[client % jobs]!, { changes: [change], after });
          times.push(performance.now() - due);
        }
      }),
    );
    const took = (performance.now() - start) / 1000;
    return {
      [`job sync ${name}, changes a second`]: { value: times.length / took, unit: '/s' },
      [`job sync ${name} median`]: ms(median(times)),
      [`job sync ${name} p99`]: ms(p99(times)),
    };
  } finally {
    agent.destroy();
    await server.stop();
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Sends to a job; gives how many changes it has. */
function send(agent: Agent, port: number, key: string, body: unknown): Promise<number> {
  return new Promise((resolve, reject) => {
    const sent = request(
      {
        agent,
        port,
        host: '127.0.0.1',
        path: `/api/jobs/${key}/sync`,
        method: 'POST',
        headers: { 'Content-Type': 'application/json' },
      },
      (response) => {
        const parts: Buffer[] = [];
        response.on('data', (part) => parts.push(part));
        response.on('end', () => {
          const text = Buffer.concat(parts).toString();
          if (response.statusCode === 200) resolve((JSON.parse(text) as { length: number }).length);
          else reject(new Error(`${response.statusCode}: ${text}`));
        });
      },
    );
    sent.on('error', reject);
    sent.end(JSON.stringify(body));
  });
}
