import { describe, expect, test } from 'vitest';
import { ask } from '../../src/ask/ask.ts';
import type { Job, Reply } from '../../src/ask/reply.ts';
import { sequence } from '../../src/rules/procedure.ts';
import { goals, last, talk } from './work.ts';

/** A job with so many inches to fill. */
const deep = (inches: number, more: object = {}): Job => ({
  v: 1,
  turn: 1,
  facts: [{ quantity: 'patch-depth', number: inches, unit: 'in', turn: 1 }],
  ...more,
});
const first = ({ steps }: Reply): string | undefined => steps[0]?.id;
const ids = ({ steps }: Reply): string[] => steps.map(({ id, lift }) => (lift ? `${id} ${lift}` : id));

describe('the checklist', () => {
  test.each([1, 2, 3, 5])('of %i in is that of so many lifts', (inches) => {
    const reply = ask({ question: 'give me the whole checklist', job: deep(inches) });
    expect(reply.kind).toBe('steps');
    expect(reply.steps.map(({ id, lift }) => ({ id, ...(lift ? { lift } : {}) }))).toEqual(sequence(inches));
    expect(reply.text.split('\n')).toHaveLength(reply.steps.length + 1);
  });

  test('without a depth says so, and lists each stage once', () => {
    const reply = last('give me the whole checklist');
    expect(ids(reply)).toEqual(sequence().map(({ id }) => id));
    expect(reply.text).toMatch(/how deep/);
  });

  test('figures come from the job, and what is unknown falls away', () => {
    const job = deep(3, {});
    const facts = [...job.facts, { quantity: 'patch-width', number: 12, unit: 'ft' as const, turn: 1 }];
    const [known, unknown] = [{ ...job, facts }, deep(3)].map(
      (each) => ask({ question: 'how do we roll the lift', job: each }).steps[0]!.text,
    ) as [string, string];
    expect(known).toMatch(/4 strips, 3 times over: 12 trips/);
    expect(unknown).not.toMatch(/strips|\{|\[|not settled/);
  });

  test('nothing is said of a figure that is not known', () => {
    for (const { text, checks } of last('give me the whole checklist').steps)
      expect([text, ...checks].join(' ')).not.toMatch(/[[\]{}|]|not settled/);
  });
});

describe('what comes before', () => {
  test('tack: everything up to sweeping, in order', () => {
    expect(ids(last('what do we do before we shoot tack'))).toEqual([
      'survey-and-mark',
      'order-and-check',
      'brief-crew',
      'traffic-control-up',
      'cut-and-clean',
      'sweep',
    ]);
  });

  test('only what is still to do, once the job has begun', () => {
    expect(ids(last('traffic control is up, what next', 'what do we do before we shoot tack'))).toEqual([
      'cut-and-clean',
      'sweep',
    ]);
  });
});

describe('what comes next', () => {
  test('after tack that broke the mix is dumped', () => {
    const reply = last('tack is down and it broke, now what?');
    expect(reply).toMatchObject({ kind: 'steps', topic: 'spread-premix', job: { stage: 'spread-premix' } });
    expect(first(reply)).toBe('spread-premix');
    expect(reply.steps[0]!.text).not.toMatch(/Not yet/);
  });

  test('while the tack is brown it says not yet, and the job waits', () => {
    const [brown, black] = talk('we tacked it and its still brown, what next', 'it broke now');
    expect(brown!.steps[0]!.text).toMatch(/^Not yet/);
    expect(brown!.job.stage).toBe('tack');
    expect(brown!.checks[0]).toMatchObject({ rule: 'tack-set', status: 'stop' });
    expect(black).toMatchObject({ topic: 'spread-premix', job: { stage: 'spread-premix' } });
    expect(black!.steps[0]!.text).not.toMatch(/Not yet/);
  });

  test('without traffic control it says that comes first', () => {
    const reply = last('we have no signs. swept, what next');
    expect(reply.steps[0]!.text).toMatch(/Not yet.*traffic control/i);
  });

  test.each([
    ['cut and swept, now what', 'tack'],
    ['tack is down whats next', 'spread-premix'],
    ['mix is dumped, what next', 'windrow'],
    ['signs are up, what now', 'cut-and-clean'],
  ])('%s: %s', (question, expected) => {
    expect(first(last(question))).toBe(expected);
  });

  test.each([
    ['first lift is down', 'roll-lift 1'],
    ['first lift is rolled, what next', 'next-lift 2'],
    ['second lift is rolled, what next', 'finish-lift 3'],
    ["we're on the second lift", 'next-lift 2'],
    ['the last lift is laid, what next', 'final-roll'],
  ])('of three lifts, %s: %s', (question, expected) => {
    expect(ids(ask({ question, job: deep(3) }))[0]).toBe(expected);
  });

  test('the second of two lifts is the finish lift', () => {
    expect(ids(ask({ question: 'first lift is rolled, what next', job: deep(2) }))[0]).toBe('finish-lift 2');
  });

  test('of even lifts the row is returned to the inside for the finish', () => {
    const text = (inches: number): string =>
      ask({ question: 'how do we lay the finish lift', job: deep(inches) }).steps[0]!.text;
    expect(text(2)).toMatch(/return it to the inside/);
    expect(text(3)).not.toMatch(/return it to the inside/);
  });

  test('a lift the patch has not is asked back', () => {
    expect(ask({ question: 'fifth lift is laid, what next', job: deep(3) })).toMatchObject({
      kind: 'clarify',
      reason: 'conflict',
    });
  });

  test('with no stage known it asks where the job is', () => {
    const reply = last('whats next');
    expect(reply).toMatchObject({ kind: 'clarify', clarify: { quantity: 'stage' } });
    for (const { send } of reply.clarify!.choices) expect(last(send).kind, send).toBe('steps');
  });

  test('asking alone does not move the job', () => {
    const [, again, third] = talk('mix is dumped, what next', 'whats next', 'whats next');
    expect(again!.job.stage).toBe('windrow');
    expect(ids(third!)).toEqual(ids(again!));
  });

  test('a job of 3 in walked by "done" visits every entry once', () => {
    const walked: string[] = [];
    let job = deep(3, { stage: 'survey-and-mark' });
    for (let i = 0; i < 40; i++) {
      const reply = ask({ question: 'done', job });
      if (reply.steps.length === 0) break;
      walked.push(ids(reply)[0]!);
      job = reply.job;
    }
    expect(['survey-and-mark', ...walked]).toEqual(sequence(3).map(({ id, lift }) => (lift ? `${id} ${lift}` : id)));
  });

  test('"done" after the one step that was told moves on from it', () => {
    const [, second, third] = talk('3 in deep patch, 300 x 12 ft, cold mix. what is first', 'done', 'done');
    expect(ids(second!)).toEqual(['order-and-check']);
    expect(ids(third!)).toEqual(['brief-crew']);
  });

  test('without a depth a lift follows the row; the job goes on once the depth is said', () => {
    const [next, told] = talk('the windrow is built, what next', '3 inches deep');
    expect(ids(next!)).toEqual(['first-lift', 'finish-lift']);
    expect(next!.job.stage).toBe('windrow');
    expect(ids(told!)[0]).toBe('first-lift 1');
  });

  test('a depth that was missing is asked for, and the job goes on from there', () => {
    const [asked, told] = talk('first lift is rolled, what next', '3 inches deep');
    expect(asked!.kind).toBe('clarify');
    expect(ids(told!)[0]).toBe('next-lift 2');
  });

  test('a further fact does not count a step as done twice', () => {
    expect(talk('tack is down and it broke, now what?', '12 ft wide').map(({ job }) => job.stage)).toEqual([
      'spread-premix',
      'spread-premix',
    ]);
  });
});

describe('stretches of the job', () => {
  test('between two steps: what stands between them, in order', () => {
    expect(ids(last('between the tack and the first lift what do we do'))).toEqual(['spread-premix', 'windrow']);
    expect(ids(last('what happens between cutting and tacking'))).toEqual(['sweep']);
  });

  test('what is left after a step is all that follows it', () => {
    expect(ids(last('whats left after the finish lift'))).toEqual([
      'final-roll',
      'clean-up',
      'traffic-control-down',
      'record',
    ]);
  });

  test.each([
    ['all cleaned up and swept off, what now', 'traffic-control-down'],
    ['signs are down and everybody is out, last thing to do?', 'record'],
    ['mix and tack ordered, machines checked, next?', 'brief-crew'],
    ['we had our safety talk, what next', 'traffic-control-up'],
    ['lumps are hauled and shoulders pulled, whats next', 'traffic-control-down'],
    ['signs are up and flaggers out, what first', 'cut-and-clean'],
  ])('%s: %s', (question, expected) => {
    expect(first(last(question))).toBe(expected);
  });

  test('a figure asked for by name is no question about the order of the work', () => {
    for (const question of [
      'what thickness do we get after laying 20 tons on 12x200',
      'now what tons do I need for 12x150x1.5',
      'tack rate on a worn road',
    ])
      expect(last(question).kind, question).not.toBe('steps');
  });
});

describe('one step', () => {
  test.each([
    ['how do I set the toe', 'first-lift'],
    ['how do I sweep', 'sweep'],
    ['whats in the tailgate talk', 'brief-crew'],
    ['how many depth readings and where', 'survey-and-mark'],
    ['checklist for start of day', 'order-and-check'],
    ['broom is making a cloud', 'sweep'],
    ['what goes in the report', 'record'],
  ])('%s: %s', (question, expected) => {
    expect(goals(question)[0]).toBe(`step/${expected}`);
  });

  test('tells the craft of it', () => {
    const { text } = last('how do I set the toe');
    expect(text).toMatch(/blade set-up:.*toe/s);
    expect(text).toMatch(/Good:/);
  });
});
