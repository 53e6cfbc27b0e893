import { describe, expect, test } from 'vitest';
import { ask } from '../../src/ask/ask.ts';
import { emptyJob, readJob } from '../../src/ask/job.ts';

const fact = { quantity: 'patch-width', number: 12, unit: 'ft', turn: 1 };
const job = {
  v: 1,
  turn: 2,
  facts: [fact, { quantity: 'surface', choice: 'worn', turn: 2 }],
  goal: 'quantity/premix-mass',
  units: 'us',
  asked: 'patch-depth',
};

describe('a job that was sent back', () => {
  test('is read as it was sent', () => expect(readJob(job)).toEqual(job));
  test('none is an empty one', () => {
    expect(readJob(undefined)).toEqual(emptyJob);
    expect(readJob(null)).toEqual(emptyJob);
  });

  test('keeps only what a job has', () => {
    const read = readJob({ ...job, extra: 'x', facts: [{ ...fact, note: '<b>' }] });
    expect(Object.keys(read!).sort()).toEqual(['asked', 'facts', 'goal', 'turn', 'units', 'v']);
    expect(read!.facts).toEqual([fact]);
  });

  test.each([
    ['text', 'v1'],
    ['a list', []],
    ['a number', 7],
    ['another version', { ...job, v: 2 }],
    ['no version', { turn: 1, facts: [] }],
    ['a turn below nothing', { ...job, turn: -1 }],
    ['half a turn', { ...job, turn: 1.5 }],
    ['facts that are no list', { ...job, facts: {} }],
    ['a fact that is none', { ...job, facts: [null] }],
    ['a figure in words', { ...job, facts: [{ ...fact, number: '12' }] }],
    ['no number', { ...job, facts: [{ ...fact, number: Number.NaN }] }],
    ['a number without end', { ...job, facts: [{ ...fact, number: Number.POSITIVE_INFINITY }] }],
    ['an end that is none', { ...job, facts: [{ ...fact, low: 'x' }] }],
    ['a unit that is none', { ...job, facts: [{ ...fact, unit: 'cubit' }] }],
    ['a unit that every object has', { ...job, facts: [{ ...fact, unit: 'constructor' }] }],
    ['an id that is none', { ...job, facts: [{ ...fact, quantity: 'Patch Width' }] }],
    ['a goal that is none', { ...job, goal: 'drop table;' }],
    ['units that are none', { ...job, units: 'imperial' }],
    ['too many facts', { ...job, facts: Array.from({ length: 121 }, () => fact) }],
    ['over 16 KiB', { ...job, padding: 'x'.repeat(17 * 1024) }],
  ])('is dropped, said, and the question answered: %s', (_, sent) => {
    expect(readJob(sent)).toBeUndefined();
    // 300 × 12 ÷ 9 × 2 × 110 ÷ 2000 = 44
    const reply = ask({ question: 'how many tons for 300 x 12 ft at 2 in', job: sent });
    expect(reply.values[0]).toMatchObject({ quantity: 'premix-mass', number: 44 });
    expect(reply.text).toMatch(/job .* could not be read/);
    expect(reply.kept).toEqual([]);
  });

  test.each(['__proto__', 'constructor', 'toString', 'hasOwnProperty'])('a fact named %s reaches nothing', (name) => {
    const sent = JSON.parse(
      `{"v":1,"turn":1,"facts":[{"quantity":"patch-width","number":12,"unit":"ft","turn":1,"${name}":{"polluted":true}}],"${name}":{"polluted":true}}`,
    );
    const reply = ask({ question: 'how many tons for 300 ft at 2 in', job: sent });
    expect(({} as Record<string, unknown>).polluted).toBeUndefined();
    expect(JSON.stringify(reply)).not.toContain('polluted');
  });

  test.each([
    ['a quantity that no record has', { quantity: 'moon-phase', number: 3, unit: '1', turn: 1 }],
    ['a quantity every object has', { quantity: 'constructor', number: 3, unit: 'ft', turn: 1 }],
    ['another dimension', { quantity: 'patch-length', number: 300, unit: 'ton', turn: 1 }],
    ['a choice that no record has', { quantity: 'surface', choice: 'marble', turn: 1 }],
    ['a choice for a quantity', { quantity: 'patch-length', choice: 'long', turn: 1 }],
  ])('a fact is left out and the rest kept: %s', (_, odd) => {
    const reply = ask({ question: 'how many tons at 2 in', job: { v: 1, turn: 1, facts: [odd, fact] } });
    expect(reply.kind).toBe('clarify');
    expect(reply.clarify?.quantity).toBe('patch-length');
    expect(reply.job.facts.map(({ quantity }) => quantity).sort()).toEqual(['patch-depth', 'patch-width']);
  });

  test('a goal that no record has is forgotten', () => {
    for (const goal of ['quantity/moon-phase', 'limit/constructor', 'nothing', 'quantity/__proto__']) {
      const reply = ask({
        question: '2 in deep',
        job: { v: 1, turn: 1, facts: [fact], goal: goal.replaceAll('_', '-') },
      });
      expect(reply.reason).toBe('no-goal');
    }
  });
});

describe('the job a reply hands back', () => {
  test('is read again as it is, and is never over 16 KiB', () => {
    let sent: unknown;
    for (let i = 0; i < 40; i++) {
      const reply = ask({
        question: `how many tons for ${100 + i} x 12 ft at 2 in, ${i + 20} mph, ${i + 40} F, 15 ton trucks`,
        ...(sent ? { job: sent } : {}),
      });
      sent = JSON.parse(JSON.stringify(reply.job));
      expect(readJob(sent)).toEqual(sent);
      expect(JSON.stringify(sent).length).toBeLessThan(16 * 1024);
    }
  });

  test('counts the turns and names the turn a fact was said in', () => {
    const first = ask({ question: 'tons for 300 x 12 ft' });
    const second = ask({ question: '2 in', job: first.job });
    expect(first.job.turn).toBe(1);
    expect(second.job.turn).toBe(2);
    expect(second.kept.find(({ quantity }) => quantity === 'patch-width')?.turn).toBe(1);
  });

  test('the same request gives the same reply, and what was sent is not changed', () => {
    const sent = Object.freeze({ v: 1, turn: 2, facts: Object.freeze([Object.freeze({ ...fact })]) });
    const request = { question: 'how many tons for 300 ft at 2 in', job: sent };
    expect(ask(request)).toEqual(ask(request));
  });

  test('with a figure of the asker for the bound of a case is answered by that case', () => {
    const facts = [
      { quantity: 'short-taper-max', number: 60, unit: 'ft', turn: 1 },
      { quantity: 'taper-kind', choice: 'merging', turn: 1 },
    ];
    const { verdict, checks } = ask({ question: 'flagger taper is 150 ft long ok?', job: { v: 1, turn: 1, facts } });
    const own = [verdict!, ...checks].filter(({ rule }) => rule === 'taper-length');
    expect(own.map(({ text }) => text).join('\n')).toContain('50 ft to 60 ft');
    expect(own.map(({ text }) => text).join('\n')).toContain('50 ft to 100 ft');
  });
});
