import { connect } from 'node:net';
import { describe, expect, test } from 'vitest';
import { starting } from './started.ts';

const start = starting();

describe('npm start', { timeout: 30_000 }, () => {
  test('prints its address on one line, answers there, and stops when told to', async () => {
    const { child, said, ended, address } = await start({ PORT: '0' });
    expect(said.out).toMatch(/^Bladehand listens on http:\/\/127\.0\.0\.1:\d+\n$/);
    expect(await (await fetch(`${address}/health`)).json()).toMatchObject({ status: 'ok' });
    const response = await fetch(`${address}/api/ask`, {
      method: 'POST',
      headers: { 'Content-Type': 'application/json' },
      body: JSON.stringify({ question: 'how many tons for 300 x 12 ft at 2 in' }),
    });
    expect(await response.json()).toMatchObject({ kind: 'value', topic: 'premix-mass' });
    child.kill('SIGTERM');
    expect(await ended).toBe(0);
    expect([said.out.split('\n').length, said.err]).toEqual([2, '']);
  });

  test('refuses a body over the limit on the wire too', async () => {
    const { address } = await start({ PORT: '0' });
    const body = JSON.stringify({ question: 'x'.repeat(10_000_000) });
    const response = await fetch(`${address}/api/ask`, {
      method: 'POST',
      headers: { 'Content-Type': 'application/json' },
      body,
    });
    expect(response.status).toBe(413);
  });

  test('answers what it had accepted before it stops', async () => {
    const { child, ended, address } = await start({ PORT: '0' });
    const { hostname, port } = new URL(address);
    const socket = connect(Number(port), hostname);
    const body = JSON.stringify({ question: 'how many tons for 300 x 12 ft at 2 in' });
    socket.write(
      `POST /api/ask HTTP/1.1\r\nHost: x\r\nContent-Type: application/json\r\nContent-Length: ${body.length}\r\nConnection: close\r\n\r\n`,
    );
    socket.write(body.slice(0, 10));
    await new Promise((resolve) => setTimeout(resolve, 200));
    child.kill('SIGINT');
    await new Promise((resolve) => setTimeout(resolve, 200));
    await expect(fetch(`${address}/health`)).rejects.toThrow();
    socket.write(body.slice(10));
    let answer = '';
    for await (const chunk of socket) answer += chunk;
    expect(answer).toMatch(/^HTTP\/1\.1 200 OK\r\n[\s\S]*premix-mass/);
    expect(await ended).toBe(0);
  });

  test('says in plain words that its port is taken, and what to do', async () => {
    const { address } = await start({ PORT: '0' });
    const second = await start({ PORT: new URL(address).port });
    expect(await second.ended).toBe(1);
    expect(second.said.out).toBe('');
    expect(second.said.err).toMatch(
      /^Port \d+ is in use\. Stop what listens there, or start on a free port: PORT=0 npm start\n$/,
    );
  });

  test.each([
    [{ PORT: 'http' }, [], /^PORT is "http"\. Set it to a whole number/],
    [{ PORT: '65536' }, [], /^PORT is "65536"/],
    [{ PORT: '0' }, ['--port=9000'], /^npm start takes no "--port=9000"/],
  ])('refuses %j %j', async (env, args, sentence) => {
    const { said, ended } = await start(env, args);
    expect(await ended).toBe(2);
    expect([said.out, said.err]).toEqual(['', expect.stringMatching(sentence)]);
  });

  test('refuses an address that is not of this machine', async () => {
    const { said, ended } = await start({ PORT: '0', HOST: '192.0.2.1' });
    expect(await ended).toBe(1);
    expect(said.err).toMatch(/^HOST is "192\.0\.2\.1", which is no address of this machine\./);
  });
});
