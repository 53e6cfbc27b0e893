import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { ask } from '../../src/ask/ask.ts';
import { startServer } from '../bench/process.ts';
import { questions } from '../bench/questions.ts';
import { bad, Slow, send } from './hostile.ts';
import { type Asked, begun, type Load, load } from './load.ts';

/** How the server held: what was measured, and each thing that it did wrong. */
export interface Soaked {
  readonly calm: Load;
  /** The same load while slow, half-open and hostile clients are at it. */
  readonly beset: Load;
  readonly faults: readonly string[];
}

/** Questions of the corpus with the replies of the library, follow-ups with the job of the one before among them. */
export function askedOf(): Asked[] {
  let job: unknown;
  return questions().flatMap((question, at) => {
    const alone = { question };
    const after = at % 3 === 0 && job !== undefined ? [{ question: 'and the tack?', job }] : [];
    const asked = [alone, ...after].map((request) => ({
      body: JSON.stringify(request),
      reply: JSON.stringify(ask(request)),
    }));
    job = JSON.parse(JSON.stringify(ask(alone).job));
    return asked;
  });
}

/** Starts a server, besets it for so many seconds, stops it under load, and tells what it did wrong. Loopback only. */
export async function soak({ seconds, connections = 64 }: { seconds: number; connections?: number }): Promise<Soaked> {
  const folder = mkdtempSync(join(tmpdir(), 'bladehand-soak-'));
  const server = await startServer(['scripts/run.mjs', 'start'], {
    DATA: folder,
    DATABASE_URL: '',
    WORKERS: '',
    RATE_LIMIT: '',
  });
  const { port } = server;
  const asked = askedOf();
  const faults: string[] = [];
  try {
    const calm = await load(port, asked, connections, seconds / 2);
    const slow = new Slow(port, 20);
    const hostile = besiege(port, seconds / 2);
    const beset = await load(port, asked, connections, seconds / 2);
    faults.push(...(await hostile));
    for (const each of [calm, beset])
      faults.push(...each.wrong.map((text) => `wrong: ${text}`), ...each.dropped.map((text) => `dropped: ${text}`));
    // A head has fifteen seconds, a request thirty.
    if (seconds >= 120 && slow.closed < slow.all / 2)
      faults.push(`only ${slow.closed} of ${slow.all} slow connections were closed`);
    slow.end();
    const health = await fetch(`http://127.0.0.1:${port}/health`);
    if (!health.ok) faults.push(`not well afterwards: ${health.status}`);
    faults.push(...(await stopUnderLoad(server, asked)));
    return { calm, beset, faults };
  } finally {
    await server.stop();
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Sends all that is bad over and over; gives what was answered as it may not be. */
async function besiege(port: number, seconds: number): Promise<string[]> {
  const until = performance.now() + seconds * 1000;
  const faults = new Set<string>();
  do {
    for (const each of bad) {
      const status = await send(port, each, 15_000);
      if (!each.statuses.includes(status))
        faults.add(`${each.name}: status ${status}, not ${each.statuses.join(' or ')}`);
    }
  } while (performance.now() < until);
  return [...faults];
}

/** Tells it to stop with requests under way, each of which it has said to go on with: every one is answered whole. */
async function stopUnderLoad(server: { port: number; pid: number }, asked: readonly Asked[]): Promise<string[]> {
  const taken = await Promise.all(
    asked.slice(0, 40).map(async (each) => ({ ...each, goOn: await begun(server.port, each.body) })),
  );
  process.kill(server.pid, 'SIGTERM');
  const faults = await Promise.all(
    taken.map(async ({ reply, goOn }) => {
      const got = await goOn().catch((fault: Error) => fault.message);
      return got === reply ? [] : [`cut off by the stop: ${got.slice(0, 200)}`];
    }),
  );
  return faults.flat();
}

/** The lines that `npm run soak` prints. */
export function told({ calm, beset, faults }: Soaked): string {
  const line = (name: string, { answered, perSecond, median, p99, worst }: Load): string =>
    `${name}: ${answered} answers, ${perSecond.toFixed(0)} a second, median ${median.toFixed(1)} ms, p99 ${p99.toFixed(1)} ms, worst ${worst.toFixed(0)} ms`;
  return [
    line('at saturation', calm),
    line('beset as well', beset),
    ...faults,
    faults.length === 0 ? 'No answer wrong, none dropped.' : `${faults.length} faults.`,
    '',
  ].join('\n');
}

/** `npm run soak`: two minutes; `--seconds 10` for less. Exit status 1 when anything was wrong. */
export async function main(args: readonly string[]): Promise<number> {
  const at = args.indexOf('--seconds');
  const seconds = at < 0 ? 120 : Number(args[at + 1]);
  if (!(seconds >= 1 && seconds <= 3600)) throw new Error('Say for how long: npm run soak -- --seconds 120');
  const soaked = await soak({ seconds });
  process.stdout.write(told(soaked));
  return soaked.faults.length === 0 ? 0 : 1;
}
