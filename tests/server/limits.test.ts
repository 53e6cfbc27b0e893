import { describe, expect, test } from 'vitest';
import { adderOf, allowanceOf } from '../../src/server/allowance.ts';
import { networkOf } from '../../src/server/limit-rate.ts';
import { starting } from './started.ts';

describe('an allowance of three a minute', () => {
  test('is for each address alone, and anew each minute', () => {
    const allowance = allowanceOf(3);
    const at = (second: number, address = 'a'): number => allowance.take(address, 60_000 * 100 + second * 1000);
    expect([at(0), at(1), at(2), at(3), at(59)]).toEqual([0, 0, 0, 57, 1]);
    expect(at(4, 'b')).toBe(0);
    expect(at(60)).toBe(0);
  });

  test('holds over several processes, once they have heard of each other', () => {
    const add = adderOf();
    const [one, two] = [allowanceOf(3), allowanceOf(3)];
    const now = 60_000 * 7;
    expect([one.take('a', now), one.take('a', now), two.take('a', now)]).toEqual([0, 0, 0]);
    for (const each of [one, two]) {
      const sums = add(each.news(now));
      for (const other of [one, two]) other.hear(sums);
    }
    expect([one.take('a', now), two.take('a', now), two.take('b', now)]).toEqual([60, 60, 0]);
    expect(one.news(now).by).toEqual([]);
  });
});

test('an address of IPv6 stands for its network, one that is mapped for itself', () => {
  expect(networkOf('192.0.2.7')).toBe('192.0.2.7');
  expect(networkOf('::ffff:192.0.2.7')).toBe('192.0.2.7');
  expect(networkOf('2001:db8:1:2:3:4:5:6')).toBe(networkOf('2001:db8:1:2::9'));
  expect(networkOf('2001:db8:1:3::9')).not.toBe(networkOf('2001:db8:1:2::9'));
  expect(networkOf('fe80::1%eth0')).toBe('fe80:0:0:0');
});

describe('npm start', { timeout: 120_000 }, () => {
  const begin = starting('SIGTERM');
  const start = (env: Record<string, string>) => begin({ PORT: '0', ...env });

  test('RATE_LIMIT turns an address away with when to come back, and goes by the proxy where it is trusted', async () => {
    const { address } = await start({ RATE_LIMIT: '5', TRUST_PROXY: '1' });
    const by = (from: string) => fetch(`${address}/cards`, { headers: { 'X-Forwarded-For': `spoofed, ${from}` } });
    // Eleven are more than two minutes let through, should one end in between.
    const answers = await Promise.all(Array.from({ length: 11 }, () => by('192.0.2.1')));
    expect(answers.filter(({ status }) => status === 200).length).toBeGreaterThanOrEqual(5);
    const refused = answers.find(({ status }) => status !== 200)!;
    expect(refused.status).toBe(429);
    expect(Number(refused.headers.get('Retry-After'))).toBeGreaterThan(0);
    expect(refused.headers.get('Content-Type')).toBe('application/problem+json');
    expect((await by('192.0.2.2')).status).toBe(200);
    expect((await fetch(`${address}/health`)).status).toBe(200);
  });

  test('WORKERS shares one address between processes, which stop together', async () => {
    const { child, said, ended, address } = await start({
      WORKERS: '2',
      DATABASE_URL: 'postgresql://nobody@127.0.0.1:1/none',
    });
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

  test.each([
    [{ WORKERS: '2', DATABASE_URL: '' }, /^Several processes cannot share one SQLite file/],
    [{ WORKERS: 'two' }, /^WORKERS is "two"/],
    [{ RATE_LIMIT: '-1' }, /^RATE_LIMIT is "-1"/],
  ])('refuses %j', async (env, sentence) => {
    const { said, ended } = await start(env);
    expect(await ended).toBe(2);
    expect(said.err).toMatch(sentence);
  });
});
