import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { ask } from '../../src/ask/ask.ts';
import { Client } from './client.ts';
import { type Figures, median, ms, timeEach } from './measure.ts';
import { type Running, startServer } from './process.ts';
import { typicalQuestion } from './questions.ts';

const request = JSON.stringify({ question: typicalQuestion });
const connections = 32;
const blockFor = 700;
const blocks = 5;

/**
 * POST /api/ask of the real server against two that send the same bytes without working anything out: one at once, one
 * that first holds the processor for as long as the engine takes. One client's waiting time, and the replies a second to
 * 32 connections.
 */
export async function run(): Promise<Figures> {
  const hold = median(
    (await timeEach({ ask: () => ask({ question: typicalQuestion }) }, { warmUp: 300, rounds: 1000 })).ask,
  );
  const folder = mkdtempSync(join(tmpdir(), 'bladehand-bench-'));
  const servers: Running[] = [];
  try {
    const real = await startServer(['scripts/run.mjs', 'start']);
    servers.push(real);
    const file = join(folder, 'reply.json');
    writeFileSync(file, await oneReply(real.port));
    const canned = await startServer(['dist/bench/canned.server.cjs', file]);
    servers.push(canned);
    const held = await startServer(['dist/bench/canned.server.cjs', file, String(hold)]);
    servers.push(held);
    const ports = { real: real.port, canned: canned.port, held: held.port };
    return { ...(await waiting(ports)), ...(await throughput(ports)), 'http reply held for': ms(hold) };
  } finally {
    await Promise.all(servers.map((server) => server.stop()));
    rmSync(folder, { recursive: true, force: true });
  }
}

type Ports = Record<'real' | 'canned' | 'held', number>;

async function oneReply(port: number): Promise<Buffer> {
  const client = await Client.connect(port, request);
  const body = await client.send();
  client.close();
  return body;
}

async function waiting(ports: Ports): Promise<Figures> {
  const clients = {
    real: await Client.connect(ports.real, request),
    canned: await Client.connect(ports.canned, request),
    held: await Client.connect(ports.held, request),
  };
  const times = await timeEach(
    { real: () => clients.real.send(), canned: () => clients.canned.send(), held: () => clients.held.send() },
    { warmUp: 500, rounds: 2000 },
  );
  for (const client of Object.values(clients)) client.close();
  return {
    'http one client p50': ms(median(times.real)),
    'http one client p50, canned': ms(median(times.canned)),
    'http one client p50, canned and held': ms(median(times.held)),
    'http one client p50, more than held': ms(median(times.real) - median(times.held)),
  };
}

async function throughput(ports: Ports): Promise<Figures> {
  const rates: Record<keyof Ports, number[]> = { real: [], canned: [], held: [] };
  const names = Object.keys(ports) as (keyof Ports)[];
  for (let block = 0; block <= blocks; block++) {
    for (const name of block % 2 ? names.toReversed() : names) {
      const rate = await oneBlock(ports[name]);
      if (block > 0) rates[name].push(rate);
    }
  }
  const perSecond = (value: number) => ({ value, unit: 'replies/s' });
  return {
    [`http ${connections} connections`]: perSecond(median(rates.real)),
    [`http ${connections} connections, canned`]: perSecond(median(rates.canned)),
    [`http ${connections} connections, canned and held`]: perSecond(median(rates.held)),
    [`http ${connections} connections, share of held`]: { value: median(rates.real) / median(rates.held), unit: '1' },
  };
}

/** Replies a second, while every connection sends its next request as soon as it has the last reply. */
async function oneBlock(port: number): Promise<number> {
  const clients = await Promise.all(Array.from({ length: connections }, () => Client.connect(port, request)));
  const start = performance.now();
  let replies = 0;
  await Promise.all(
    clients.map(async (client) => {
      while (performance.now() - start < blockFor) {
        await client.send();
        replies += 1;
      }
      client.close();
    }),
  );
  return (replies * 1000) / (performance.now() - start);
}
