import { describe, expect, test } from 'vitest';
import { ask } from '../../src/ask/ask.ts';
import { conflicts } from '../../src/rules/conflicts.ts';
import { boundsOf } from '../../src/rules/judge.ts';
import { knowledge } from '../../src/rules/knowledge.ts';
import type { RelationRecord } from '../../src/rules/shapes.ts';
import { solved } from '../rules/facts.ts';
import { disturbed, membersOf } from './over-determined.ts';
import { sayFacts } from './said-facts.ts';

const identities = [...knowledge.relations.values()].filter(({ plan }) => !plan);
const plans = [...knowledge.relations.values()].filter(({ plan }) => plan);

const cases = identities.flatMap((record) =>
  membersOf(record).flatMap((member) => {
    const facts = disturbed(record, member);
    return facts ? [[`${record.id}: ${member}`, { record, member, facts }] as const] : [];
  }),
);

/** What a rule holds a figure against may be more than it asks for: there the figure is judged, and nothing disagrees. */
const isBound = ({ finds }: RelationRecord): boolean =>
  [...knowledge.limits.values()].some((rule) => boundsOf(rule).includes(finds.id));

test('every relation that is no plan is over-determined', () => {
  expect(identities.filter((record) => !cases.some(([, each]) => each.record === record)).map(({ id }) => id)).toEqual(
    [],
  );
});

describe('with one figure that does not fit the others', () => {
  test.each(cases)('%s is a contradiction', (_, { facts }) => {
    expect(conflicts(knowledge, solved(facts)).length).toBeGreaterThan(0);
  });

  test.each(cases)(
    '%s: the reply says what does not agree, and what the others make of it',
    (_, { record, member, facts }) => {
      const question = sayFacts(facts);
      const { reason, text, clarify, verdict, job } = ask({ question });
      if (verdict && isBound(record)) {
        expect(['ok', 'caution', 'stop'], `${question}\n${text}`).toContain(verdict.status);
        return;
      }
      expect(reason, `${question}\n${text}`).toBe('conflict');
      expect(text).toContain(knowledge.quantities.get(member)!.title);
      expect(clarify!.choices.length, text).toBeGreaterThan(0);
      // Whichever of them is taken, the rest holds.
      for (const { send } of clarify!.choices)
        expect(ask({ question: send, job }).reason, `${question}\n${text}\n${send}`).not.toBe('conflict');
    },
  );
});

describe('a plan that is not kept to is no contradiction', () => {
  const asked = plans.flatMap((record) => {
    const facts = disturbed(record, record.finds.id);
    return facts ? [[record.id, facts] as const] : [];
  });
  test.each(asked)('%s', (id, facts) => {
    expect(conflicts(knowledge, solved(facts)).map(({ method }) => method.relation.id)).not.toContain(id);
  });
});
