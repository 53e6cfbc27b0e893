import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  cosine,
  evaluate,
  factsOf,
  inWords,
  larger,
  lookup,
  minus,
  over,
  plus,
  power,
  roundUp,
  split,
  type Term,
  times,
} from '../../src/calc/expression.ts';
import { isolate } from '../../src/calc/isolate.ts';
import { formulas, valuesWithin } from './formulas.ts';

const [a, b, c] = ['a', 'b', 'c'].map((id) => ({ id, dimension: 'count' })) as [Term, Term, Term];
const whole = { op: 'fact', id: 'whole', dimension: 'count' } as const;
const name = (leaf: { op: 'fact'; id: string } | { op: 'constant'; number: number }): string =>
  leaf.op === 'fact' ? leaf.id : String(leaf.number);

describe('a formula turned round', () => {
  test.each([
    [times(a, b, c), 'b', 'whole ÷ (a × c)'],
    [times(a, b), 'a', 'whole ÷ b'],
    [plus(a, b, c), 'c', 'whole − a − b'],
    [over(a, b), 'a', 'whole × b'],
    [over(a, b), 'b', 'a ÷ whole'],
    [minus(a, b), 'a', 'whole + b'],
    [minus(a, b), 'b', 'a − whole'],
    [power(a, 2), 'a', '√(whole)'],
    [power(over(a, b), 0.5), 'b', 'a ÷ whole²'],
    [times(over(a, b), plus(c, 2)), 'c', 'whole ÷ (a ÷ b) − 2'],
    [over(plus(a, 1), minus(b, c)), 'c', 'b − (a + 1) ÷ whole'],
  ])('%#', (formula, id, text) => {
    expect(inWords(isolate(formula, id, whole)!, name)).toBe(text);
  });

  test.each([
    ['a fact that stands twice', times(a, plus(a, b)), 'a'],
    ['a fact that does not stand there', times(a, b), 'c'],
    ['under a rounding', roundUp(over(a, b)), 'a'],
    ['under the larger of two', larger(a, b), 'a'],
    ['under a cosine', times(a, cosine(b)), 'b'],
    ['in a table', lookup(a, { id: 't', key: 'count', value: 'count', rows: [] }), 'a'],
    ['in a branch', split(a, 40, b, c), 'b'],
  ])('%s has no way back', (_, formula, id) => {
    expect(isolate(formula, id, whole)).toBeUndefined();
  });

  test('a sole factor beside what cannot be undone still has its way back', () => {
    expect(inWords(isolate(times(a, cosine(b)), 'a', whole)!, name)).toBe('whole ÷ cos(b)');
  });
});

/**
 * Any formula of products, quotients, sums, differences and powers gives each of its facts back, as long as no part of it
 * falls to nothing or below, where a root has two answers and a difference keeps too few digits.
 */
test('turned round and worked out, a formula gives the fact back', () => {
  const facts = fc.infiniteStream(fc.double({ min: 0.2, max: 20, noNaN: true }));
  let turned = 0;
  fc.assert(
    fc.property(formulas('times', 'over', 'plus', 'minus', 'power'), facts, (formula, facts) => {
      const values = new Map(factsOf(formula).map((id) => [id, facts.next().value as number]));
      const within = valuesWithin(formula, (id) => values.get(id)!);
      fc.pre(within.every((value) => value > 0.01 && value < 1e4));
      for (const [id, value] of values) {
        const back = isolate(formula, id, whole)!;
        turned++;
        const found = evaluate(back, (other) => (other === 'whole' ? within[0]! : values.get(other)!));
        expect(Math.abs(found - value)).toBeLessThanOrEqual(1e-6 * value);
      }
    }),
    { seed: 44, numRuns: 1000 },
  );
  expect(turned).toBeGreaterThan(2000);
});
