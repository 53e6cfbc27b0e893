import { describe, expect, test } from 'vitest';
import { markItem } from '../../src/ask/quiz/mark.ts';
import {
  daysUntil,
  noPractice,
  practiceTally,
  practised,
  readPractice,
  roundOf,
  roundSize,
} from '../../src/ask/quiz/practice.ts';
import { knowledge } from '../../src/rules/knowledge.ts';
import { rightAnswer } from './sets.ts';

const day = 20_000;

describe('practice', () => {
  test('a first round has new questions, easy ones, no point twice, each with its key', () => {
    const round = roundOf(knowledge, noPractice, day);
    expect(round).toHaveLength(roundSize);
    expect(new Set(round.map(({ token }) => token)).size).toBe(roundSize);
    expect(new Set(round.map(({ item }) => item.level))).toEqual(new Set(['easy']));
    for (const { item } of round) expect(markItem(item, rightAnswer(item))).toBe('right');
    expect(roundOf(knowledge, noPractice, day)).toEqual(round);
  });

  test('what was missed comes back tomorrow, before anything new, with other figures where it has any', () => {
    const [missed, known] = roundOf(knowledge, noPractice, day);
    const list = practised(practised(noPractice, missed!.token, false, day), known!.token, true, day);
    expect(practiceTally(list, day)).toEqual({ due: 0, known: 1 });
    const tomorrow = roundOf(knowledge, list, day + 1);
    expect(tomorrow[0]!.token).toBe(missed!.token);
    expect(tomorrow.map(({ token }) => token)).not.toContain(known!.token);
    expect(practiceTally(list, day + 1)).toEqual({ due: 1, known: 1 });
  });

  test('right again and again it comes back later and later; missed once it begins anew', () => {
    let list = noPractice;
    let now = day;
    const gaps: number[] = [];
    for (let at = 0; at < 8; at++) {
      list = practised(list, 'x', true, now);
      gaps.push(list.cards.x!.due - now);
      now = list.cards.x!.due;
    }
    expect(gaps).toEqual([...daysUntil.slice(1), 64, 64]);
    list = practised(list, 'x', false, now);
    expect(list.cards.x!.due).toBe(now + 1);
  });

  test('over a month of right answers the round moves on and never repeats itself in a day', () => {
    let list = noPractice;
    const seen = new Set<string>();
    for (let at = 0; at < 30; at++) {
      const round = roundOf(knowledge, list, day + at);
      expect(round).toHaveLength(roundSize);
      for (const { token } of round) {
        seen.add(token);
        list = practised(list, token, true, day + at);
      }
    }
    expect(seen.size).toBeGreaterThan(60);
  });

  test('a seat asks its own topics and the safety of all', () => {
    const round = roundOf(knowledge, { ...noPractice, seat: 'flagger' }, day, 20);
    for (const { item } of round)
      expect(['traffic', 'safety', 'hazards', ...['blade', 'rolling', 'trucks', 'tack']]).toContain(item.topic);
  });
});

test.each([undefined, null, 'x', {}, { v: 2, cards: {} }, { v: 1, cards: null }])('%j is no list', (kept) =>
  expect(readPractice(kept)).toEqual(noPractice),
);

test('a list is read back, and what is damaged in it left out', () => {
  const list = practised({ ...noPractice, seat: 'roller' }, 'a', true, day);
  expect(readPractice(JSON.parse(JSON.stringify(list)))).toEqual(list);
  const damaged = {
    v: 1,
    seat: 'cook',
    cards: { a: { step: 1, due: day }, b: { step: 'x', due: 1 }, c: null, d: { step: 99, due: 1 } },
  };
  expect(readPractice(damaged)).toEqual({ v: 1, cards: { a: { step: 1, due: day } } });
});
