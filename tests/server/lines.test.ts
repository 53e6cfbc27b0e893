import { Readable, Writable } from 'node:stream';
import { describe, expect, test } from 'vitest';
import { runCommand } from '../../src/server/command/run.ts';
import { splitLines, tooLong } from '../../src/server/command/split-lines.ts';
import { replySchema } from '../../src/server/schema/reply.ts';
import { fakeAsk, fakeRefuse } from './fake.ts';

const tons = 'how many tons for 300 x 12 ft at 2 in';

async function jsonl(input: Iterable<Buffer> | string, argv: string[] = []) {
  const out: string[] = [];
  const err: string[] = [];
  const into = (lines: string[]) =>
    new Writable({
      write: (chunk, _, done) => {
        lines.push(String(chunk));
        setImmediate(done);
      },
    });
  const stdin = Readable.from(typeof input === 'string' ? [Buffer.from(input)] : input);
  const world = { ask: fakeAsk, refuse: fakeRefuse, version: 'test0001', stdin, stdout: into(out), stderr: into(err) };
  const status = await runCommand(['--jsonl', ...argv], world);
  const text = out.join('');
  const replies = text
    .split('\n')
    .slice(0, -1)
    .map((line) => replySchema.parse(JSON.parse(line)));
  return { status, text, replies, err: err.join('') };
}

describe('--jsonl', () => {
  test('answers one request a line, one reply a line, in order', async () => {
    const { status, replies, err } = await jsonl(`${tons}\n{"question": "tons for 150 x 12 ft"}\nwho won the game\n`);
    expect([status, err]).toEqual([0, '']);
    expect(replies.map(({ kind }) => kind)).toEqual(['value', 'clarify', 'unknown']);
  });

  test('skips blank lines, and takes CRLF, a byte order mark and a last line without its break', async () => {
    const { replies } = await jsonl(`\ufeff${tons}\r\n\r\n   \n\n{"question":"${tons}"}`);
    expect(replies.map(({ kind }) => kind)).toEqual(['value', 'value']);
  });

  test('reads letters that are cut in two between chunks', async () => {
    const bytes = Buffer.from('¿Cuántas toneladas?\n½\n');
    const { replies } = await jsonl([...bytes].map((byte) => Buffer.from([byte])));
    expect(replies).toHaveLength(2);
  });

  test('gives a bad line a reply of its own that says what to do, and goes on', async () => {
    const bad = [
      '{"question": ',
      '{}',
      '{"question": 7}',
      `{"question": "${tons}", "units": "imperial"}`,
      `{"question": "${tons}", "lang": "fr"}`,
      `{"question": "${tons}", "colour": "red"}`,
      'x'.repeat(48 * 1024 + 1),
    ];
    const { status, replies, err } = await jsonl(`${bad.join('\n')}\n${tons}\n`);
    expect([status, err]).toEqual([0, '']);
    expect(replies).toHaveLength(bad.length + 1);
    for (const reply of replies.slice(0, -1))
      expect(reply).toMatchObject({
        kind: 'unknown',
        reason: expect.any(String),
        text: expect.stringMatching(/\w+ .*\./),
      });
    expect(replies.at(-1)).toMatchObject({ kind: 'value' });
  });

  test('survives a fault of ours: the line gets a reply, the exit status tells', async () => {
    const { status, replies, err } = await jsonl(`break\n${tons}\n`);
    expect(status).toBe(1);
    expect(replies.map(({ kind }) => kind)).toEqual(['unknown', 'value']);
    expect(err).toMatch(/^Fault: TypeError at .*\n$/);
    expect(err).not.toMatch(/secret/);
  });

  test('gives the units of the call to lines that name none', async () => {
    const { replies } = await jsonl(`${tons}\n{"question": "${tons}", "units": "us"}\n`, ['--units', 'metric']);
    expect(replies.map(({ job }) => job.units)).toEqual(['metric', 'us']);
  });

  test('hands the job on', async () => {
    const { job } = fakeAsk({ question: tons });
    const { replies } = await jsonl(JSON.stringify({ question: 'who won the game', job }));
    expect(replies[0]!.job).toMatchObject({ turn: 2 });
  });

  test('with no lines says nothing', async () => {
    expect(await jsonl('')).toEqual({ status: 0, text: '', replies: [], err: '' });
  });

  test('reads no further ahead than its reader takes', async () => {
    let read = 0;
    function* source() {
      for (; read < 10_000; read++) yield Buffer.from('who won the game\n');
    }
    let taken = 0;
    let furthest = 0;
    const slow = new Writable({
      highWaterMark: 1,
      write: (_, __, done) => {
        taken++;
        furthest = Math.max(furthest, read - taken);
        setImmediate(done);
      },
    });
    const stdin = Readable.from(source());
    const world = { ask: fakeAsk, refuse: fakeRefuse, version: 'v', stdin, stdout: slow, stderr: slow };
    expect(await runCommand(['--jsonl'], world)).toBe(0);
    expect(taken).toBe(10_000);
    expect(furthest).toBeLessThan(100);
  });

  test('ends quietly when its reader has had enough', async () => {
    const closed = new Writable({
      write: (_, __, done) => done(Object.assign(new Error('closed'), { code: 'EPIPE' })),
    });
    const stdin = Readable.from([Buffer.from(`${tons}\n${tons}\n`)]);
    const world = { ask: fakeAsk, refuse: fakeRefuse, version: 'v', stdin, stdout: closed, stderr: closed };
    expect(await runCommand(['--jsonl'], world)).toBe(0);
  });
});

test('a line that never ends takes no more memory than a line may', async () => {
  function* source() {
    for (let i = 0; i < 2000; i++) yield Buffer.alloc(64 * 1024, 'x');
    yield Buffer.from('\nnext\n');
  }
  const before = process.memoryUsage();
  const lines: (string | symbol)[] = [];
  for await (const line of splitLines(Readable.from(source()), 1000)) lines.push(line);
  expect(lines).toEqual([tooLong, 'next']);
  expect(process.memoryUsage().arrayBuffers - before.arrayBuffers).toBeLessThan(64 * 1024 * 1024);
});
