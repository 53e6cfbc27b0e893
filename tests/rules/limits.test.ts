import { describe, expect, test } from 'vitest';
import { compare, toBase } from '../../src/calc/quantity.ts';
import { judgeLimit, judgePractice, type Outcome } from '../../src/rules/judge.ts';
import { knowledge } from '../../src/rules/knowledge.ts';
import type { Facts, LimitRecord } from '../../src/rules/shapes.ts';
import { solved } from './facts.ts';

const limits = [...knowledge.limits.values()].map((rule) => [rule.id, rule] as const);
const judged = (rule: LimitRecord, facts: Facts) => judgeLimit(rule, solved(facts));

/** How grave a broken limit is by what the record writes, read off beside the judge. */
function gravity(rule: LimitRecord, facts: Facts): Outcome[] {
  if (rule.cases) return ['caution', 'stop'];
  if (!rule.stopFrom || rule.breaks === 'stop') return [rule.breaks];
  const from = toBase(rule.stopFrom.number, rule.stopFrom.unit);
  const { on, bound } = judged(rule, facts);
  const past = on! > bound! ? compare(on!, from) >= 0 : compare(on!, from) <= 0;
  return [past ? 'stop' : 'caution'];
}

describe.each(limits)('%s', (_, rule) => {
  const { holds, boundary, breaks, cannotTell, also = [] } = rule.examples;

  test('holds', () => expect(judged(rule, holds).status).toBe('ok'));

  test('holds at the limit itself', () => {
    const { status, on, bound } = judged(rule, boundary);
    expect(status).toBe('ok');
    const ends = [
      bound,
      ...[rule.max, rule.min].flatMap((end) => (end && !('kind' in end) ? [toBase(end.number, end.unit)] : [])),
    ];
    expect(ends.some((end) => end !== undefined && compare(on!, end) === 0)).toBe(true);
  });

  test('is broken', () => expect(gravity(rule, breaks)).toContain(judged(rule, breaks).status));

  test('cannot be told, and says what would settle it', () => {
    const { status, needs } = judged(rule, cannotTell);
    expect(status).toBe('cannot-tell');
    expect(needs.length).toBeGreaterThan(0);
    for (const id of needs) expect(knowledge.quantities.has(id) || knowledge.choices.has(id)).toBe(true);
  });

  if (also.length) {
    test('comes out so in further cases', () => {
      expect(also.map(({ facts }) => judged(rule, facts).status)).toEqual(also.map(({ is }) => is));
    });
  }

  test('has the words for what it can come out at', () => {
    for (const { status } of [judged(rule, breaks), ...also.map(({ facts }) => judged(rule, facts))]) {
      if (status !== 'caution' && status !== 'stop') continue;
      const said = [rule.text[status], ...(rule.cases ?? []).map(({ text }) => text?.[status])];
      expect(said.some(Boolean), `a sentence for ${status}`).toBe(true);
    }
  });

  test('speaks only of figures that are known by then', () => {
    for (const [facts, text] of [
      [holds, rule.text.ok],
      [breaks, rule.text[judged(rule, breaks).status as 'caution' | 'stop']],
    ] as const) {
      const known = solved(facts);
      const places = [...(text ?? '').matchAll(/\{([^{}]{0,80})\}/g)].map(([, name]) => name!);
      expect(places.filter((name) => name !== 'on' && name !== 'limit' && !known.has(name))).toEqual([]);
    }
  });
});

describe.each([...knowledge.practices.values()].map((rule) => [rule.id, rule] as const))('%s', (_, rule) => {
  const conditions: Facts = Object.fromEntries((rule.when ?? []).map(({ choice, is }) => [choice.id, is[0]!]));

  test('judges each way of doing it', () => {
    for (const { id } of rule.on.options) {
      const { status } = judgePractice(rule, solved({ ...conditions, [rule.on.id]: id }));
      expect(status, id).toBe(rule.judged[id]?.status ?? 'ok');
    }
  });

  test('has a way that holds and a way that does not', () => {
    const statuses = rule.on.options.map(({ id }) => rule.judged[id]?.status ?? 'ok');
    expect(statuses).toContain('ok');
    expect(statuses.some((status) => status !== 'ok')).toBe(true);
  });

  if (rule.on.default === undefined) {
    test('cannot be told while nobody says how it is done', () => {
      expect(judgePractice(rule, solved(conditions))).toMatchObject({ status: 'cannot-tell', needs: [rule.on.id] });
    });
  }
});

test('a default is nobody’s figure, so no limit is held against it', () => {
  for (const [, rule] of limits) {
    if (rule.on.default) expect(judged(rule, {}).status, rule.id).not.toBe('ok');
  }
});
