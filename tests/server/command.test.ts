import { Readable, Writable } from 'node:stream';
import { describe, expect, test } from 'vitest';
import { runCommand } from '../../src/server/command/run.ts';
import { fakeAsk, fakeRefuse } from './fake.ts';

/** Calls the command with streams of its own. */
async function call(argv: string[], input: string | Buffer[] = '', tty = false) {
  const out: string[] = [];
  const err: string[] = [];
  const into = (lines: string[]) =>
    new Writable({
      write: (chunk, _, done) => {
        lines.push(String(chunk));
        done();
      },
    });
  const stdin = Object.assign(Readable.from(typeof input === 'string' ? [Buffer.from(input)] : input), { isTTY: tty });
  const world = { ask: fakeAsk, refuse: fakeRefuse, version: 'test0001', stdin, stdout: into(out), stderr: into(err) };
  const status = await runCommand(argv, world);
  return { status, out: out.join(''), err: err.join('') };
}

const tons = 'how many tons for 300 x 12 ft at 2 in';

describe('a question', () => {
  test('is answered as text', async () => {
    const { status, out, err } = await call([tons]);
    expect([status, err]).toEqual([0, '']);
    expect(out).toMatch(/^[^\n]+: 44\.0 tons/);
    expect(out).toMatch(/[^\n]\n$/);
    expect(out).not.toMatch(/Workings|Rules and sources/);
  });

  test('may come in several words, or from standard input', async () => {
    const { out } = await call([tons]);
    expect((await call(tons.split(' '))).out).toBe(out);
    expect((await call(['-'], `${tons}\r\n`)).out).toBe(out);
    expect((await call([], tons)).out).toBe(out);
  });

  test('with --workings and --source says how and whence', async () => {
    const { out } = await call(['--workings', '--source', tons]);
    expect(out).toMatch(
      /\n\nWorkings\n {2}patch area = patch length × patch width\n {4}= 300 ft × 12 ft\n {4}= 400 sq yd\n {4}from geometry\n/,
    );
    expect(out).toMatch(/\n\nRules and sources\n {2}[^\n]+\n {4}from common practice, no source\n/);
    expect(out).toMatch(/compacted weight 110 .*\n {4}assumed by quantity\/unit-weight\n/);
  });

  test('with --json is the whole reply', async () => {
    expect(JSON.parse((await call(['--json', tons])).out)).toEqual(fakeAsk({ question: tons }));
  });

  test('with -q is the figure alone, or the first line', async () => {
    expect((await call(['-q', tons])).out).toBe('44.0 tons\n');
    expect((await call(['--quiet', 'can we lay a 2 in lift'])).out).toMatch(/^Stop: .*\n$/);
  });

  test('takes its units along', async () => {
    expect(JSON.parse((await call(['--json', '--units', 'metric', tons])).out).job.units).toBe('metric');
  });

  test('that asks back lists the choices', async () => {
    expect((await call(['tons for 150 x 12 ft'])).out).toMatch(
      /How deep .*\n {2}- 1 in\n {2}- 1 1\/2 in\n {2}- 2 in\n$/,
    );
  });
});

describe('the exit status', () => {
  test.each([
    [0, 'an answer', [tons]],
    [0, 'a stop, which is an answer', ['can we lay a 2 in lift']],
    [1, 'a fault of ours', ['break']],
    [2, 'an option that is none', ['--nonsense']],
    [2, 'units that are none', ['--units', 'imperial', tons]],
    [2, 'an option without its value', ['--units']],
    [2, 'a language that is none', ['--lang', 'fr', tons]],
    [2, 'two forms of output', ['--json', '-q', tons]],
    [2, 'a question beside --jsonl', ['--jsonl', tons]],
    [2, 'an empty question', ['']],
    [2, 'no question on standard input', ['-']],
    [2, 'a question that is too long', ['x'.repeat(2001)]],
    [3, 'one more thing needed', ['tons for 150 x 12 ft']],
    [4, 'out of range', ['2 ft deep']],
    [5, 'no rule on it', ['who won the game']],
  ])('is %i for %s', async (status, _, argv) => {
    const result = await call(argv);
    expect(result.status).toBe(status);
    if (status === 1 || status === 2) expect([result.out, result.err]).toEqual(['', expect.stringMatching(/\S/)]);
    else expect([result.out, result.err]).toEqual([expect.stringMatching(/\S/), '']);
  });

  test('of a fault tells nothing of what was typed', async () => {
    expect((await call(['break'])).err).not.toMatch(/secret|break\b/);
  });
});

describe('help', () => {
  test('starts with examples and lists every option', async () => {
    const { status, out } = await call(['--help']);
    expect(status).toBe(0);
    expect(out.indexOf('npm run --silent ask -- "how many tons')).toBeLessThan(out.indexOf('--workings  '));
    for (const option of ['--json', '--jsonl', '--units', '--lang', '-q', '-h', '--version', '--source'])
      expect(out).toContain(option);
    expect((await call(['-h'])).out).toBe(out);
  });

  test('is short, and no success, for nothing at all on a terminal', async () => {
    const { status, out, err } = await call([], '', true);
    expect([status, out]).toEqual([2, '']);
    expect(err).toMatch(/Ask in quotes[\s\S]*--help/);
  });

  test('--version names the program and the rules', async () => {
    expect((await call(['--version'])).out).toMatch(/^bladehand \d+\.\d+\.\d+, rules test0001\n$/);
  });
});
