import { readFileSync } from 'node:fs';
import { setTimeout as wait } from 'node:timers/promises';
import { Client } from './client.ts';
import type { Figures } from './measure.ts';
import { type Running, startServer } from './process.ts';
import { questions, typicalQuestion } from './questions.ts';

const asks = 10_000;
const commands = { real: ['scripts/run.mjs', 'start'], hello: ['dist/bench/canned.server.cjs'] };

/** Resident memory of the server after its first reply and after 10,000 questions of the corpus, beside the same library that says hello. Linux alone. */
export async function run(): Promise<Figures> {
  const sizes: Record<string, { idle: number; after: number }> = {};
  for (const [name, args] of Object.entries(commands)) sizes[name] = await measured(args);
  const { real, hello } = sizes as Record<keyof typeof commands, { idle: number; after: number }>;
  const mb = (value: number): { value: number; unit: string } => ({ value, unit: 'MB' });
  const times = (value: number): { value: number; unit: string } => ({ value, unit: 'x' });
  return {
    'memory idle': mb(real.idle),
    'memory idle, hello': mb(hello.idle),
    'memory idle, to hello': times(real.idle / hello.idle),
    [`memory after ${asks} questions`]: mb(real.after),
    [`memory after ${asks} questions, hello`]: mb(hello.after),
    [`memory after ${asks} questions, to hello`]: times(real.after / hello.after),
  };
}

async function measured(args: readonly string[]): Promise<{ idle: number; after: number }> {
  const server = await startServer(args);
  try {
    await askAll(server, [typicalQuestion], 1);
    await wait(1000);
    const idle = residentOf(server);
    await askAll(server, questions(), asks);
    await wait(1000);
    return { idle, after: residentOf(server) };
  } finally {
    await server.stop();
  }
}

/** Asks the questions in turn, so many times in all, over one connection each. */
async function askAll({ port }: Running, texts: readonly string[], times: number): Promise<void> {
  const clients = await Promise.all(texts.map((question) => Client.connect(port, JSON.stringify({ question }))));
  for (let i = 0; i < times; i++) await clients[i % clients.length]!.send();
  for (const client of clients) client.close();
}

/** Megabytes that the system holds for a process. */
function residentOf({ pid }: Running): number {
  const kilobytes = /^VmRSS:\s+(\d+) kB/m.exec(readFileSync(`/proc/${pid}/status`, 'utf8'))?.[1];
  if (!kilobytes) throw new Error(`the memory of process ${pid} could not be read`);
  return Number(kilobytes) / 1024;
}
