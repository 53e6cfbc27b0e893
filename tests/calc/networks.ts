import fc from 'fast-check';
import { type Expression, evaluate, over, plus, type Term, times } from '../../src/calc/expression.ts';
import type { RelationShape } from '../../src/calc/relation.ts';
import type { Network } from '../../src/calc/solve.ts';
import { networkOf } from './patch.ts';

export interface Made {
  readonly net: Network;
  /** A figure for every quantity that all relations agree on. */
  readonly values: ReadonlyMap<string, number>;
}

const shapes: readonly ((parts: readonly Term[]) => Expression)[] = [
  (parts) => times(...parts),
  (parts) => plus(...parts),
  ([first, ...others]) => (others.length ? over(first!, times(...others)) : times(first!, 3)),
];

/**
 * Random networks: a few plain quantities, then relations that each find a new one from two or three of those before, so
 * that one figure for each makes all of them true.
 */
export const networks: fc.Arbitrary<Made> = fc
  .record({
    plain: fc.array(fc.double({ min: 0.5, max: 20, noNaN: true }), { minLength: 3, maxLength: 6 }),
    relations: fc.array(
      fc.record({
        shape: fc.constantFrom(...shapes),
        parts: fc.array(fc.nat(1000), { minLength: 2, maxLength: 3 }),
      }),
      { minLength: 1, maxLength: 6 },
    ),
  })
  .map(({ plain, relations }) => {
    const term = (at: number): Term => ({ id: `q${String(at).padStart(2, '0')}`, dimension: 'count' });
    const values = new Map(plain.map((value, at) => [term(at).id, value]));
    const made = relations.map(({ shape, parts }, i): RelationShape => {
      const before = plain.length + i;
      const by = shape([...new Set(parts.map((part) => part % before))].map(term));
      values.set(
        term(before).id,
        evaluate(by, (id) => values.get(id)!),
      );
      return { id: `r${i}`, finds: term(before), by };
    });
    return { net: networkOf(made), values };
  });
