import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { describe, expect, onTestFinished, test } from 'vitest';
import { Client } from '../../scripts/bench/client.ts';
import { median, p99, quantile, timeEach } from '../../scripts/bench/measure.ts';

describe('figures of a bench', () => {
  test('median and p99 of 1 to 1000, in any order', () => {
    const figures = Array.from({ length: 1000 }, (_, at) => ((at * 7) % 1000) + 1);
    expect(median(figures)).toBe(501);
    expect(p99(figures)).toBe(991);
    expect(quantile([4], 0.99)).toBe(4);
    expect(quantile([], 0.5)).toBeNaN();
  });

  test('every piece of work is done once a round, in turn first, and the warm-up is not counted', async () => {
    const order: string[] = [];
    const times = await timeEach({ a: () => order.push('a'), b: () => order.push('b') }, { warmUp: 1, rounds: 3 });
    expect(order.join('')).toBe('abbaabba');
    expect(times.a).toHaveLength(3);
    expect(times.b).toHaveLength(3);
  });

  test('work that takes its time is waited for', async () => {
    const { slow } = await timeEach(
      { slow: () => new Promise((wake) => setTimeout(wake, 20)) },
      { warmUp: 0, rounds: 2 },
    );
    expect(median(slow)).toBeGreaterThan(15);
  });
});

describe('the client of a bench', () => {
  async function serverThat(answer: (chunked: boolean) => string, status = 200): Promise<number> {
    const server = createServer((request, reply) => {
      let body = '';
      request.on('data', (chunk) => {
        body += chunk;
      });
      request.on('end', () => {
        const chunked = body === 'chunked';
        const text = answer(chunked);
        reply.writeHead(status, chunked ? {} : { 'Content-Length': Buffer.byteLength(text) });
        if (chunked) reply.write(text.slice(0, 3));
        reply.end(chunked ? text.slice(3) : text);
      });
    });
    await new Promise<void>((settle) => server.listen(0, '127.0.0.1', settle));
    onTestFinished(() => void server.close());
    return (server.address() as AddressInfo).port;
  }

  test.each(['plain', 'chunked'])('reads a %s reply whole, again and again', async (body) => {
    const text = `½ ${'x'.repeat(100_000)}`;
    const client = await Client.connect(await serverThat(() => text), body);
    for (let time = 0; time < 3; time++) expect((await client.send()).toString()).toBe(text);
    client.close();
  });

  test('a reply that is no answer is an error, so that no bench measures refusals', async () => {
    const client = await Client.connect(await serverThat(() => 'not so', 422), 'plain');
    await expect(client.send()).rejects.toThrow('not so');
    client.close();
  });
});
