import { describe, expect, test } from 'vitest';
import { ask } from '../../src/ask/ask.ts';
import type { JobFact, Said } from '../../src/ask/reply.ts';
import { sayFact } from '../../src/ask/views/names.ts';
import { knowledge } from '../../src/rules/knowledge.ts';

const { job } = ask({ question: 'how many tons for 300 x 12 ft at 2 in' });

/** The facts of the job after the words that a Change button puts into the box were sent. */
function factsAfter(fact: { quantity: string } & Said): readonly JobFact[] {
  return ask({ question: sayFact(fact), job }).job.facts;
}
const saidIn = (facts: readonly JobFact[]) => facts.map(({ turn, ...fact }) => fact);
const before = (quantity: string) => saidIn(job.facts.filter((fact) => fact.quantity !== quantity));

/** Figures a page can offer to change: those assumed, and those asked for. */
const changeable = [...knowledge.quantities.values()].flatMap(({ id, default: figure, question }) => {
  const value = figure ?? question?.choices[0];
  return value ? [{ quantity: id, number: value.number, unit: value.unit }] : [];
});

describe('what a Change button puts into the box is read as that fact and no other', () => {
  test.each(changeable)('$quantity', (fact) => {
    expect(saidIn(factsAfter(fact))).toEqual(
      expect.arrayContaining([expect.objectContaining(fact), ...before(fact.quantity)]),
    );
    expect(factsAfter(fact)).toHaveLength(before(fact.quantity).length + 1);
  });
});
