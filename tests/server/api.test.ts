import { beforeEach, describe, expect, test } from 'vitest';
import { problemSchema } from '../../src/server/openapi.ts';
import { replySchema } from '../../src/server/schema/reply.ts';
import { app, post, reports } from './fixtures.ts';

const question = 'how many tons for 300 x 12 ft at 2 in';

beforeEach(() => {
  reports.length = 0;
});

/** A refusal as RFC 9457 section 3 has it: its media type, and a status member equal to the status line. */
async function problemOf(response: Response, status: number) {
  expect(response.status).toBe(status);
  expect(response.headers.get('Content-Type')).toBe('application/problem+json');
  const body = problemSchema.parse(await response.json());
  expect(body.status).toBe(status);
  return body;
}

describe('a question', () => {
  test('is answered with the whole reply', async () => {
    const response = await post({ question });
    expect(response.status).toBe(200);
    expect(response.headers.get('Content-Type')).toBe('application/json');
    const reply = replySchema.parse(await response.json());
    expect(reply.values[0]).toMatchObject({ quantity: 'premix-mass', number: 44, unit: 'ton' });
  });

  test('goes on from the job of the last reply', async () => {
    const answerTo = async (body: object) => replySchema.parse(await (await post(body)).json());
    const first = await answerTo({ question });
    const second = await answerTo({ question, job: first.job, units: 'metric', lang: 'en' });
    expect(first.job.turn).toBe(1);
    expect(second.job).toMatchObject({ turn: 2, units: 'metric' });
  });

  test('that needs one thing more, or that no rule is on, is answered too', async () => {
    expect(await (await post({ question: 'tons for 150 x 12 ft' })).json()).toMatchObject({ kind: 'clarify' });
    expect(await (await post({ question: 'who won the game' })).json()).toMatchObject({ kind: 'unknown' });
  });

  test.each([null, 'gone', 7, [], { v: 99 }, { v: 1, facts: 'none' }])(
    'with the damaged job %j is answered',
    async (job) => {
      expect((await post({ question, job })).status).toBe(200);
    },
  );

  test('may be 2,000 characters long', async () => {
    expect((await post({ question: 'x'.repeat(2000) })).status).toBe(200);
  });

  test('may name its content type with a character set', async () => {
    expect((await post({ question }, { 'Content-Type': 'Application/JSON; charset=utf-8' })).status).toBe(200);
  });
});

describe('a request that cannot be read', () => {
  test.each(['', '{', 'how many tons', '{"question": }', '\u0000'])('as JSON gets 400: %j', async (body) => {
    expect((await problemOf(await post(body), 400)).detail).toMatch(/brackets, quotes and commas/);
  });

  test('over the size limit gets 413, announced or not', async () => {
    const body = JSON.stringify({ question, job: 'x'.repeat(48 * 1024) });
    expect((await problemOf(await post(body), 413)).detail).toMatch(/48 KiB/);
    const stream = new Blob([body]).stream();
    const request = { method: 'POST', headers: { 'Content-Type': 'application/json' }, body: stream, duplex: 'half' };
    await problemOf(await app.request('/api/ask', request as RequestInit), 413);
  });

  test('has room for a job of 16 KiB', async () => {
    expect((await post({ question, job: 'x'.repeat(16 * 1024) })).status).toBe(200);
  });

  test.each(['text/plain', 'application/x-www-form-urlencoded', 'application/jsonp', ''])(
    'in %j gets 415',
    async (type) => {
      expect((await problemOf(await post({ question }, { 'Content-Type': type }), 415)).detail).toMatch(
        /application\/json/,
      );
    },
  );
});

describe('a request that does not fit gets 422 with the place and what to do', () => {
  const one = async (body: unknown) => (await problemOf(await post(body), 422)).errors;

  test.each([
    ['no question', {}],
    ['an empty one', { question: '' }],
    ['blanks alone', { question: ' \n\t' }],
    ['a number', { question: 12 }],
    ['null', { question: null }],
  ])('%s', async (_, body) => {
    expect(await one(body)).toEqual([{ pointer: '#/question', detail: expect.stringMatching(/^Type a question/) }]);
  });

  test('2,001 characters', async () => {
    const [error] = (await one({ question: 'x'.repeat(2001) }))!;
    expect(error).toEqual({
      pointer: '#/question',
      detail: expect.stringMatching(/over 2,000 characters\. Ask one thing/),
    });
  });

  test('units and languages that are none', async () => {
    expect(await one({ question, units: 'imperial', lang: 'fr' })).toEqual([
      { pointer: '#/units', detail: expect.stringMatching(/"us" or "metric"/) },
      { pointer: '#/lang', detail: expect.stringMatching(/"en" or "es"/) },
    ]);
  });

  test('members that no request has, their names kept as pointers (RFC 6901)', async () => {
    expect(await one({ question, 'a/b~c d': 1, '\ud800': 2 })).toEqual([
      { pointer: '#/a~1b~0c%20d', detail: expect.stringMatching(/^Leave out "a\/b~c d"/) },
      { pointer: '#/%EF%BF%BD', detail: expect.stringMatching(/^Leave out/) },
    ]);
    expect((await one(JSON.parse('{"question": "tons", "__proto__": {"units": "us"}}')))?.[0]?.pointer).toBe(
      '#/__proto__',
    );
  });

  test.each([[[]], [null], [12], ['"tons"']])('%j, which is no object', async (body) => {
    expect(await one(body)).toEqual([{ pointer: '#', detail: expect.stringMatching(/^Send a JSON object/) }]);
  });
});

describe('addresses and methods', () => {
  test('an unknown address gets 404, as a page for a browser', async () => {
    await problemOf(await app.request('/nowhere'), 404);
    await problemOf(await app.request('/api/nowhere', { headers: { Accept: 'text/html' } }), 404);
    const page = await app.request('/nowhere', { headers: { Accept: 'text/html,*/*' } });
    expect(page.status).toBe(404);
    expect(page.headers.get('Content-Type')).toMatch(/^text\/html/);
    expect(await page.text()).toMatch(/<h1>There is nothing at this address<\/h1>/);
  });

  test.each([
    ['/api/ask', 'GET', 'POST, OPTIONS'],
    ['/api/ask', 'DELETE', 'POST, OPTIONS'],
    ['/health', 'POST', 'GET, HEAD, OPTIONS'],
    ['/openapi.json', 'PUT', 'GET, HEAD, OPTIONS'],
    ['/assets/bladehand.css', 'POST', 'GET, HEAD, OPTIONS'],
    ['/', 'PATCH', 'GET, POST, HEAD, OPTIONS'],
  ])('%s refuses %s with the methods it takes', async (path, method, allow) => {
    const response = await app.request(path, { method });
    await problemOf(response, 405);
    expect(response.headers.get('Allow')).toBe(allow);
    const options = await app.request(path, { method: 'OPTIONS' });
    expect([options.status, options.headers.get('Allow'), await options.text()]).toEqual([204, allow, '']);
  });

  test.each(['/', '/health', '/openapi.json', '/assets/bladehand.css'])(
    'HEAD %s is GET without a body',
    async (path) => {
      const [head, get] = [await app.request(path, { method: 'HEAD' }), await app.request(path)];
      expect([head.status, await head.text()]).toEqual([200, '']);
      expect(head.headers.get('Content-Type')).toBe(get.headers.get('Content-Type'));
    },
  );
});

describe('a fault inside', () => {
  test('gets 500 in plain words, and nothing of what happened gets out', async () => {
    const response = await post(
      { question: 'break' },
      { 'Content-Type': 'application/json', 'X-Request-Id': 'fault-7' },
    );
    const text = JSON.stringify(await problemOf(response.clone(), 500));
    expect(text).toMatch(/on our side/);
    expect(text).not.toMatch(/secret|TypeError|\/home|at /);
    expect(response.headers.get('X-Content-Type-Options')).toBe('nosniff');
    expect(reports).toEqual([expect.stringMatching(/^Fault in request fault-7: TypeError at .*fake\.ts/)]);
    expect(reports.join()).not.toMatch(/secret|\n/);
  });

  test('is a page for a browser', async () => {
    const response = await app.request('/?q=break', { headers: { Accept: 'text/html' } });
    expect(response.status).toBe(500);
    const html = await response.text();
    expect(html).toMatch(/<h1>A fault of ours<\/h1>/);
    expect(html).not.toMatch(/secret|TypeError/);
  });
});

test('health says that the server answers, and by which rules', async () => {
  const response = await app.request('/health');
  expect([response.status, await response.json()]).toEqual([200, { status: 'ok', rules: { version: 'test0001' } }]);
});
