import { describe, expect, test } from 'vitest';
import { problems } from '../../src/ask/quiz/problems.ts';
import {
  figureAsked,
  judgement,
  lookAlikes,
  mustPass,
  notTried,
  records,
  sayAlso,
  seats,
  topics,
} from '../../src/ask/quiz/topics.ts';
import { mistakeNames } from '../../src/ask/wording/quiz-mistakes.en.ts';
import { limitStems, practiceStems, problemStems } from '../../src/ask/wording/quiz-stems.en.ts';
import { knowledge } from '../../src/rules/knowledge.ts';
import { work } from '../../src/rules/work.ts';

describe('what the makers go by is there', () => {
  const rules = new Set([...knowledge.limits.keys(), ...knowledge.practices.keys()]);
  const { faults } = work;

  test('every rule and fault named for a topic or a seat is a record', () => {
    const named = [...Object.values(records).flatMap((ids) => ids.split(/\s+/)), ...lookAlikes.flat()];
    expect(named.filter((id) => !rules.has(id) && !faults.has(id))).toEqual([]);
    expect([...mustPass, ...figureAsked, ...notTried, ...Object.keys(sayAlso)].filter((id) => !rules.has(id))).toEqual(
      [],
    );
    expect(
      Object.values(seats)
        .flatMap(({ musts }) => musts)
        .filter((id) => !mustPass.has(id)),
    ).toEqual([]);
    expect(Object.keys(records).filter((topic) => !(topics as readonly string[]).includes(topic))).toEqual([]);
  });

  test('every matter of judgement is an option of its rule', () => {
    const options = [...knowledge.practices.values()].flatMap((rule) =>
      rule.on.options.map(({ id }) => `${rule.id}/${id}`),
    );
    expect([...judgement].filter((each) => !options.includes(each))).toEqual([]);
  });

  test('every problem has its stem, every mistake its name, and the other way round', () => {
    expect(Object.keys(problemStems).sort()).toEqual(problems.map(({ id }) => id).sort());
    const slips = problems.flatMap(({ mistakes }) => Object.keys(mistakes));
    expect(slips.filter((slip) => !Object.hasOwn(mistakeNames, slip))).toEqual([]);
    expect(Object.keys({ ...limitStems, ...practiceStems }).filter((id) => !rules.has(id))).toEqual([]);
  });

  test('a stem says every figure that its problem draws, and no other', () => {
    for (const { id, draws } of problems) {
      const said = [...problemStems[id]!.matchAll(/\{([a-z0-9-]+)\}/g)].map(([, name]) => name!);
      const unsaid = Object.keys(draws).filter((name) => !said.includes(name));
      // What there is one of is said in words: undiluted, one coat, half and half, one distance for all three.
      expect(
        unsaid.filter((name) => !['dilution', 'tack-coats', 'sign-spacing-b', 'sign-spacing-c'].includes(name)),
        id,
      ).toEqual([]);
      expect(
        said.filter((name) => !Object.hasOwn(draws, name)),
        id,
      ).toEqual([]);
    }
  });
});
