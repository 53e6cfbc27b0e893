import { describe, expect, test } from 'vitest';
import { standingOf } from '../../src/ask/quiz/changes.ts';
import { readKept } from '../../src/ask/quiz/desk/kept.ts';
import { asJson } from '../../src/ask/quiz/export/json.ts';
import { type Knowledge, knowledge } from '../../src/rules/knowledge.ts';
import { setOf } from './sets.ts';

/** The rules with another bound on the speed of a roller, as an agency might set it. */
function withLimit(id: string, number: number): Knowledge {
  const rule = knowledge.limits.get(id)!;
  const changed = { ...rule, max: { ...rule.max!, number } } as typeof rule;
  return { ...knowledge, version: 'changed', limits: new Map([...knowledge.limits, [id, changed]]) };
}

describe('a key of an earlier day', () => {
  test.each([
    { count: 60, seed: 'kept' },
    { count: 60, seed: 'kept', variant: 'B' as const },
    { count: 30, seed: 'kept', units: 'metric' as const },
    { seat: 'roller', count: 12, seed: 'kept' },
  ])('is the same while the rules are: %j', (request) => {
    const { set } = setOf(request);
    expect(standingOf(knowledge, set)).toEqual(set.items.map(() => 'same'));
  });

  test('says which question a changed rule touches, and no other', () => {
    const { set, made } = setOf({ topics: ['rolling'], count: 12, seed: 'b', about: ['limit/roller-speed'] });
    const at = made.findIndex(({ point }) => point === 'rule/roller-speed');
    expect(at).toBeGreaterThanOrEqual(0);
    const standing = standingOf(withLimit('roller-speed', 2), set);
    expect(standing[at]).not.toBe('same');
    const others = standing.filter((_, place) => set.items[place]!.rule !== 'limit/roller-speed');
    expect(new Set(others)).toEqual(new Set(['same']));
  });

  test('a rule that is gone is told', () => {
    const { set, made } = setOf({ topics: ['rolling'], count: 10, seed: 'b', about: ['limit/roller-speed'] });
    const limits = new Map([...knowledge.limits].filter(([id]) => id !== 'roller-speed'));
    const standing = standingOf({ ...knowledge, version: 'gone', limits }, set);
    expect(standing[made.findIndex(({ point }) => point === 'rule/roller-speed')]).toBe('gone');
  });
});

describe('a saved file', () => {
  const { set } = setOf({ count: 8, seed: 'file' });
  test('is read back as the set it was', () => expect(readKept(asJson(set))).toEqual(set));
  test.each([
    ['no JSON', '{'],
    ['nothing', ''],
    ['another thing', '{"a":1}'],
    ['a list', '[]'],
    ['no items', JSON.stringify({ ...set, items: [] })],
    ['an item without its key', JSON.stringify({ ...set, items: [{ ...set.items[0]!, key: null }] })],
    ['a kind that is none', JSON.stringify({ ...set, items: [{ ...set.items[0]!, kind: 'essay' }] })],
    ['no blueprint', JSON.stringify({ ...set, blueprint: undefined })],
    ['too long', ' '.repeat(1_000_001)],
  ])('%s is refused', (_, text) => expect(readKept(text)).toBeUndefined());
});

describe('a swap', () => {
  const request = { topics: ['mix', 'tack'], count: 8, seed: 's' };
  const before = setOf(request);
  const { token } = before.made[2]!;
  const after = setOf({ ...request, swaps: [token] });

  test('takes one question out, keeps the others, and asks nothing twice', () => {
    const stems = (set: typeof before) => set.set.items.map(({ stem }) => stem);
    expect(stems(after)[2]).not.toBe(stems(before)[2]);
    expect(stems(after).filter((_, at) => at !== 2)).toEqual(stems(before).filter((_, at) => at !== 2));
    expect(after.made.map((each) => each.token)).not.toContain(token);
    expect(after.set.items[2]!.topic).toBe(before.set.items[2]!.topic);
  });

  test('of what must be in a set is refused, and one of nothing does nothing', () => {
    const seat = setOf({ seat: 'flagger', count: 10, seed: 's' });
    const must = seat.made.find((each) => each.must)!;
    expect(setOf({ seat: 'flagger', count: 10, seed: 's', swaps: [must.token, 'nonsense'] }).set.items).toEqual(
      seat.set.items,
    );
  });

  test('holds for set B: the same points, other figures', () => {
    const b = setOf({ ...request, swaps: [token], variant: 'B' });
    expect(b.made.map(({ point }) => point).sort()).toEqual(after.made.map(({ point }) => point).sort());
  });
});
