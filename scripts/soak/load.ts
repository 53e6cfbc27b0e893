import { Agent, type IncomingMessage, request } from 'node:http';

/** What a load came to. Times in milliseconds. */
export interface Load {
  readonly answered: number;
  /** Replies that are not what the library answers, the first few of them. */
  readonly wrong: readonly string[];
  /** Requests without a reply, the first few of them. */
  readonly dropped: readonly string[];
  readonly perSecond: number;
  readonly median: number;
  readonly p99: number;
  readonly worst: number;
}

/** A question and the very bytes that must come back for it. */
export interface Asked {
  readonly body: string;
  readonly reply: string;
}

const fewFirst = 5;

/** Asks without pause over so many connections for so many seconds, each reply held against what it must be. */
export async function load(port: number, asked: readonly Asked[], connections: number, seconds: number): Promise<Load> {
  const agent = new Agent({ keepAlive: true, maxSockets: connections });
  const took: number[] = [];
  const wrong: string[] = [];
  const dropped: string[] = [];
  const started = performance.now();
  const until = started + seconds * 1000;
  let next = 0;
  const client = async (): Promise<void> => {
    while (performance.now() < until) {
      const { body, reply } = asked[next++ % asked.length]!;
      const start = performance.now();
      try {
        const got = await post(port, body, agent);
        took.push(performance.now() - start);
        if (got !== reply) wrong.push(`${body.slice(0, 200)} → ${got.slice(0, 200)}`);
      } catch (fault) {
        dropped.push(`${body.slice(0, 200)}: ${(fault as Error).message}`);
      }
    }
  };
  await Promise.all(Array.from({ length: connections }, client));
  agent.destroy();
  const spent = (performance.now() - started) / 1000;
  took.sort((a, b) => a - b);
  const at = (share: number): number => took[Math.min(took.length - 1, Math.floor(took.length * share))] ?? Number.NaN;
  return {
    answered: took.length,
    wrong: wrong.slice(0, fewFirst),
    dropped: dropped.slice(0, fewFirst),
    perSecond: took.length / spent,
    median: at(0.5),
    p99: at(0.99),
    worst: at(1),
  };
}

/** Posts a question; resolves to the body of its reply. Rejects for any status but 200 and for a connection that breaks. */
function post(port: number, body: string, agent: Agent): Promise<string> {
  return new Promise((resolve, reject) => {
    const sent = request({ ...whereTo(port, body), agent }, (response) => readReply(response, resolve, reject));
    sent.on('error', reject);
    sent.end(body);
  });
}

/** Begins to post a question; resolves, once the server has taken it, to what sends the body and gives the reply. */
export function begun(port: number, body: string): Promise<() => Promise<string>> {
  return new Promise((settle, fail) => {
    const to = whereTo(port, body);
    const sent = request({ ...to, headers: { ...to.headers, Expect: '100-continue' } });
    const reply = new Promise<string>((resolve, reject) => {
      sent.on('response', (response) => readReply(response, resolve, reject));
      sent.on('error', reject);
    });
    reply.catch(fail);
    sent.on('continue', () =>
      settle(() => {
        sent.end(body);
        return reply;
      }),
    );
    sent.flushHeaders();
  });
}

const whereTo = (port: number, body: string) => ({
  port,
  host: '127.0.0.1',
  path: '/api/ask',
  method: 'POST',
  headers: { 'Content-Type': 'application/json', 'Content-Length': Buffer.byteLength(body) },
});

function readReply(response: IncomingMessage, resolve: (body: string) => void, reject: (fault: Error) => void): void {
  let got = '';
  response.setEncoding('utf8');
  response.on('data', (chunk: string) => {
    got += chunk;
  });
  response.on('end', () =>
    response.statusCode === 200 ? resolve(got) : reject(new Error(`status ${response.statusCode}`)),
  );
  response.on('error', reject);
}
