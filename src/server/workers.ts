import cluster from 'node:cluster';
import { type Allowance, adderOf, type Counts } from './allowance.ts';

/** How often a process tells the others what it counted, in milliseconds. */
const telling = 200;
/** A worker that ends is replaced, but not over and over: so many within the time below are a fault. */
const mostEnds = 10;
const endsWithin = 10_000;

const isCounts = (message: unknown): message is { counts: Counts } =>
  typeof message === 'object' && message !== null && 'counts' in message;

/**
 * Runs the server in several processes that share its address. The system hands connections to them in turn; what each
 * address has asked is added up over all. Tells the address once, passes a stop on, and resolves to the exit status when all have ended.
 */
export function runWorkers(
  count: number,
  tell: (address: string) => void,
  complain: (why: string) => void,
): Promise<number> {
  return new Promise((resolve) => {
    const add = adderOf();
    let stopping = false;
    let told = false;
    let status = 0;
    const ends: number[] = [];
    const live = (): NonNullable<typeof cluster.workers>[string][] => Object.values(cluster.workers ?? {});
    const stop = (): void => {
      if (stopping) for (const worker of live()) worker?.process.kill('SIGKILL');
      stopping = true;
      for (const worker of live()) worker?.process.kill('SIGTERM');
    };
    for (const signal of ['SIGTERM', 'SIGINT'] as const) process.on(signal, stop);
    cluster.on('message', (_worker, message: unknown) => {
      if (!isCounts(message)) {
        const { address } = (message ?? {}) as { address?: string };
        if (address && !told) tell(address);
        told ||= address !== undefined;
        return;
      }
      const counts = add(message.counts);
      if (counts.by.length > 0) for (const worker of live()) worker?.send({ counts });
    });
    cluster.on('exit', (_worker, code) => {
      ends.push(Date.now());
      const often = ends.filter((at) => at > Date.now() - endsWithin).length > mostEnds;
      if (!stopping && told && !often) cluster.fork();
      else if (!stopping) {
        status = code || 1;
        if (often) complain('workers');
        stop();
      }
      if (live().every((worker) => worker === undefined || worker.isDead())) resolve(status);
    });
    for (let made = 0; made < count; made++) cluster.fork();
  });
}

/** In a worker: tells what it counts and hears what all did. Gives what ends that. */
export function shareCounts(allowance: Allowance): () => void {
  const timer = setInterval(() => {
    const counts = allowance.news(Date.now());
    if (counts.by.length > 0) process.send?.({ counts });
  }, telling);
  timer.unref();
  const hear = (message: unknown): void => {
    if (isCounts(message)) allowance.hear(message.counts);
  };
  process.on('message', hear);
  return () => {
    clearInterval(timer);
    process.off('message', hear);
  };
}

export const isWorker = (): boolean => cluster.isWorker;
export const tellPrimary = (address: string): void => {
  process.send?.({ address });
};
