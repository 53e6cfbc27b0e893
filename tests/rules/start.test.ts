import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Known, type Solution, solve } from '../../src/calc/solve.ts';
import { knowledge, optionFact } from '../../src/rules/knowledge.ts';
import { startOf, whatFollows } from '../../src/rules/start.ts';

const sorted = (solution: Solution) => [...solution].sort(([a], [b]) => (a < b ? -1 : 1));

const figures = fc
  .record({ id: fc.constantFrom(...knowledge.quantities.keys()), value: fc.double({ min: 0, max: 500, noNaN: true }) })
  .map((fact): Known => fact);
const options = fc
  .constantFrom(
    ...[...knowledge.choices.values()].flatMap(({ id, options }) => options.map((option) => optionFact(id, option.id))),
  )
  .map((id): Known => ({ id, value: 1 }));

test('laid over the defaults, facts come to what they and all defaults come to from nothing', () => {
  fc.assert(
    fc.property(
      fc.array(fc.oneof(figures, options), { maxLength: 8 }),
      fc.subarray(
        knowledge.defaults.map(({ id }) => id),
        { maxLength: 3 },
      ),
      (facts, open) => {
        const left = new Set(open);
        const all = solve(knowledge.network, startOf(knowledge, facts, left));
        expect(sorted(whatFollows(knowledge, facts, left))).toEqual(sorted(all));
      },
    ),
    { seed: 44, numRuns: 500 },
  );
});
