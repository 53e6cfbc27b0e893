import { describe, expect, test } from 'vitest';
import { ask } from '../../src/ask/ask.ts';
import { work } from '../../src/rules/work.ts';
import { goals, last } from './work.ts';

const faults = [...work.faults.values()];
const found = faults.flatMap(({ id, examples }) => examples.finds.map((question) => [question, id] as const));
const others = faults.flatMap(({ id, examples }) => examples.not.map((question) => [question, id] as const));

/** Rough descriptions that no record holds as its example. */
const alike: readonly (readonly [string, string])[] = [
  ['mat is tearing behind the blade', 'tearing'],
  ['its shoving under the roller', 'pushing'],
  ['fine cracks after rolling', 'roller-cracks'],
  ['rock pocket on the edge', 'segregation'],
  ['patch is bleeding', 'bleeding'],
  ['fat spot', 'bleeding'],
  ['wont stick to old road', 'slippage'],
  ['edges raveling', 'raveling'],
  ['looks open/dry', 'segregation'],
  ['roller marks wont come out', 'roller-marks'],
  ['washboard in the patch', 'washboards'],
  ['patch sitting high', 'end-bump'],
  ['bump at the end', 'end-bump'],
  ['truck tires picking the tack up', 'tack-tracking'],
  ['bars got a dead nozzle leaving a streak', 'bar-streak'],
  ['rain hit it before it broke', 'rained-on-tack'],
  ['cold mix wont quit shoving under the roller', 'pushing'],
  ['roller sat and left a dent', 'roller-marks'],
  ['ran out 40 ft short', 'runs-short'],
  ['roller left cracks behind it', 'roller-cracks'],
  ['a line of mix stands up right where the toe picks up the row', 'ridge'],
  ['gray lumps of the old road mixed in with the new mat', 'chunks'],
  ['outside foot of the mat is only half as thick', 'thin-edge'],
  ['half moon cracks in the new mat where people brake', 'slippage'],
  ['one place sinks under the roller and springs back', 'soft-spot'],
  ['mix gave out before the end of the patch', 'runs-short'],
  ['the rut we filled sits below the old road now', 'low-patch'],
  ['blade left ripples all down the lane', 'washboards'],
  ['hardly any mix on the outside edge', 'thin-edge'],
];

describe('faults are found by what is seen', () => {
  test.each(found)('%s: %s', (question, id) => {
    expect(goals(question)[0]).toBe(`fault/${id}`);
  });

  test.each(others)('%s is not %s', (question, id) => {
    expect(goals(question)[0]).not.toBe(`fault/${id}`);
  });

  test.each(alike)('%s: %s', (question, id) => {
    expect(goals(question)[0]).toBe(`fault/${id}`);
  });

  test('not when a figure is asked for', () => {
    expect(last('how many tons for 300 x 12 ft at 2 in, the last patch had ripples').kind).toBe('value');
  });
});

describe('a fault is answered', () => {
  test('with causes in order, each with a remedy and its rule', () => {
    const reply = last('grader is bouncing and leaving ripples across the mat');
    expect(reply).toMatchObject({ kind: 'fault', topic: 'washboards' });
    expect(reply.causes[0]).toMatchObject({ text: 'Ground speed too high for laying', rule: 'lay-speed' });
    expect(reply.causes.every(({ remedy, rule }) => remedy && rule)).toBe(true);
    expect(reply.text).toMatch(/NAVEDTRA 14081/);
  });

  test('with the rule that a figure breaks', () => {
    const job = { v: 1, turn: 1, facts: [{ quantity: 'grader-speed', number: 6, unit: 'mph', turn: 1 }] };
    const reply = ask({ question: 'there are ripples across the mat', job });
    expect(reply.checks.find(({ rule }) => rule === 'lay-speed')?.status).toMatch(/caution|stop/);
  });

  test('asking what tells look-alikes apart, and taking the answer', () => {
    const asked = last('chunks in the mix');
    expect(asked).toMatchObject({ kind: 'fault', topic: 'chunks', clarify: { quantity: 'chunk-look' } });
    expect(asked.causes).toHaveLength(2);
    const black = last('chunks in the mix', 'black and shiny');
    expect(black.clarify).toBeUndefined();
    expect(black.causes.map(({ text }) => text)).toEqual([expect.stringMatching(/crusted/)]);
    expect(last('chunks in the mix', 'gray and broken').causes.map(({ text }) => text)).toEqual([
      expect.stringMatching(/old surface/),
    ]);
  });

  test.each([
    ['across the mat', 'washboards'],
    ['along the outer edge', 'scallops'],
    ['on the cutting edge of the blade', 'washboards'],
  ])('a bare "scalloped" asks where; %s is %s', (answer, topic) => {
    expect(last('the mat is scalloped').clarify?.quantity).toBe('wave-place');
    expect(last('the mat is scalloped', answer)).toMatchObject({ kind: 'fault', topic });
  });

  test('a soft spot asks what is soft; a soft base is dug out', () => {
    expect(last('soft spot in the fresh mat').clarify?.quantity).toBe('soft-place');
    expect(last('soft spot in the fresh mat', 'only the new mix').causes).toHaveLength(1);
    expect(last('soft spot in the fresh mat', 'the old road moves too')).toMatchObject({
      kind: 'repair',
      topic: 'dig-out',
    });
  });
});
