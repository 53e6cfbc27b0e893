import { ask } from '../ask/ask.ts';
import { allowanceOf } from './allowance.ts';
import { createApp } from './app.ts';
import { limitRate } from './limit-rate.ts';
import { listenUntilStopped } from './listen.ts';
import { lazyStore, openStore, placeFrom } from './store/open.ts';
import { en } from './wording/en.ts';
import { isWorker, runWorkers, shareCounts, tellPrimary } from './workers.ts';

/**
 * `npm start`: serves the page and the API on HOST and PORT until it is told to stop, and prints its address on one line.
 * Resolves to the exit status: 0 stopped, 1 could not listen, 2 called in a way that cannot be read.
 */
export async function main(argv: string[]): Promise<number> {
  const [argument] = argv;
  if (argument === '-h' || argument === '--help') {
    process.stdout.write(en.start.help);
    return 0;
  }
  if (argument !== undefined) return complain(en.start.argument(argument), 2);
  const { HOST, PORT } = process.env;
  const port = PORT ? portIn(PORT) : 8787;
  if (port === undefined) return complain(en.start.badPort(PORT ?? ''), 2);
  const counts = countsIn(process.env);
  if (typeof counts === 'string') return complain(counts, 2);
  const { workers, rate, hops } = counts;
  if (workers > 1 && !isWorker()) {
    if (!process.env.DATABASE_URL) return complain(en.start.workersNeedDatabase, 2);
    return runWorkers(
      workers,
      (address) => process.stdout.write(`${en.listening(address)}\n`),
      () => complain(en.start.workersEnd, 1),
    );
  }
  const allowance = rate > 0 ? allowanceOf(rate) : undefined;
  const unshare = allowance && isWorker() ? shareCounts(allowance) : undefined;
  const store = lazyStore(() => openStore(placeFrom(process.env)));
  const app = createApp({
    ask,
    report: (line) => complain(line, 1),
    store: store.get,
    ...(allowance ? { gate: limitRate(allowance, hops) } : {}),
  });
  const host = HOST || '127.0.0.1';
  try {
    await listenUntilStopped(app, host, port, (address) => {
      if (isWorker()) tellPrimary(address);
      else process.stdout.write(`${en.listening(address)}\n`);
    });
    return 0;
  } catch (fault) {
    return complain(whyNot(fault, host, port), 1);
  } finally {
    unshare?.();
    await store.close();
  }
}

function complain(sentence: string, status: number): number {
  process.stderr.write(`${sentence}\n`);
  return status;
}

/** How many processes, requests a minute and proxies the environment names; a sentence for one that is no number. */
function countsIn(
  env: Readonly<Record<string, string | undefined>>,
): { workers: number; rate: number; hops: number } | string {
  const [workers, rate, hops] = (['WORKERS', 'RATE_LIMIT', 'TRUST_PROXY'] as const).map((name) => {
    const value = env[name] ?? '';
    return value === '' ? 0 : /^\d{1,6}$/.test(value) ? Number(value) : en.start.badCount(name, value);
  });
  const wrong = [workers, rate, hops].find((each) => typeof each === 'string');
  return wrong === undefined
    ? ({ workers, rate, hops } as { workers: number; rate: number; hops: number })
    : String(wrong);
}

function portIn(text: string): number | undefined {
  const port = /^\d{1,5}$/.test(text.trim()) ? Number(text) : Number.NaN;
  return port <= 65535 ? port : undefined;
}

function whyNot(fault: unknown, host: string, port: number): string {
  const { inUse, notAllowed, noAddress, failed } = en.start;
  const { code, message } = fault as NodeJS.ErrnoException;
  if (code === 'EADDRINUSE') return inUse(port);
  if (code === 'EACCES') return notAllowed(port);
  if (code === 'EADDRNOTAVAIL' || code === 'ENOTFOUND' || code === 'EAI_AGAIN') return noAddress(host);
  return failed(message);
}
