import { Client } from './client.ts';
import { type Figures, median, ms } from './measure.ts';
import { startServer } from './process.ts';
import { typicalQuestion } from './questions.ts';

const request = JSON.stringify({ question: typicalQuestion });
const launches = 15;
const commands = {
  real: ['scripts/run.cjs', 'start'],
  hello: ['dist/bench/canned.server.cjs'],
};

/** From the start of the process to its first reply: the real server, and the same library that says hello. */
export async function run(): Promise<Figures> {
  const times: Record<keyof typeof commands, number[]> = { real: [], hello: [] };
  for (let launch = 0; launch <= launches; launch++) {
    for (const name of ['real', 'hello'] as const) {
      const time = await firstReply(commands[name]);
      if (launch > 0) times[name].push(time);
    }
  }
  return {
    'start to first reply': ms(median(times.real)),
    'start to first reply, hello': ms(median(times.hello)),
    'start to first reply, quickest': ms(Math.min(...times.real)),
  };
}

async function firstReply(args: readonly string[]): Promise<number> {
  const start = performance.now();
  const server = await startServer(args);
  try {
    const client = await Client.connect(server.port, request);
    await client.send();
    const time = performance.now() - start;
    client.close();
    return time;
  } finally {
    await server.stop();
  }
}
