import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type LookupTable, lookup, over } from '../../src/calc/expression.ts';
import { bareGround, type Known, overlaid, type Solution, solve } from '../../src/calc/solve.ts';
import { networks } from './networks.ts';
import { assumed, defaults, depth, lift, lifts, networkOf, patch, said, thickest } from './patch.ts';

const sorted = (solution: Solution) => [...solution].sort(([a], [b]) => (a < b ? -1 : 1));

/** What a layer over a ground must come to: all facts together, from nothing. */
const afresh = (net: typeof patch, below: readonly Known[], without: readonly string[], facts: readonly Known[]) =>
  solve(net, [...facts, ...below.filter(({ id }) => !without.includes(id) && !facts.some((fact) => fact.id === id))]);

describe('laid over a ground, facts come to what all of them come to from nothing', () => {
  // Nought as well, which nothing can be divided by: then a way is a dead end and another one must be found.
  const figure = fc.oneof(
    { weight: 1, arbitrary: fc.constant(0) },
    { weight: 3, arbitrary: fc.double({ min: 0.5, max: 20, noNaN: true }) },
  );

  const layers = networks.chain(({ net, values }) => {
    const known = (assuming: boolean): fc.Arbitrary<Known[]> =>
      fc
        .uniqueArray(
          fc.record({ id: fc.constantFrom(...values.keys(), 'stranger'), value: figure, last: fc.boolean() }),
          { selector: ({ id }) => id },
        )
        .map((facts) =>
          facts.map(({ id, value, last }) => ({ id, value, ...(assuming ? { assumed: true, last } : {}) })),
        );
    return fc.record({
      net: fc.constant(net),
      below: known(true),
      facts: fc.oneof(known(false), known(true)),
      without: fc.subarray([...values.keys()], { maxLength: 2 }),
    });
  });

  test('on random networks, with facts taken away and ways that lead nowhere', () => {
    fc.assert(
      fc.property(layers, ({ net, below, facts, without }) => {
        const ground = overlaid(bareGround(net), { facts: below });
        const before = sorted(ground);
        expect(sorted(overlaid(ground, { facts, without }))).toEqual(sorted(afresh(net, below, without, facts)));
        expect(sorted(ground)).toEqual(before);
      }),
      { seed: 44, numRuns: 3000 },
    );
  });

  test('layer upon layer', () => {
    fc.assert(
      fc.property(layers, layers, ({ net, below, facts, without }, { facts: more }) => {
        const own = more.filter(({ id }) => net.places.has(id) && !facts.some((fact) => fact.id === id));
        const upper = overlaid(overlaid(overlaid(bareGround(net), { facts: below }), { facts, without }), {
          facts: own,
        });
        const all = [
          ...facts,
          ...below.filter(({ id }) => !without.includes(id) && !facts.some((fact) => fact.id === id)),
        ];
        expect(sorted(upper)).toEqual(sorted(afresh(net, all, [], own)));
      }),
      { seed: 44, numRuns: 1000 },
    );
  });
});

test('a way that the new figures have no answer for gives way to another, and what was found by it with it', () => {
  // To 3 in a table says how thick a lift may be; beyond its end only the default is left.
  const table: LookupTable = { id: 'thickest-by-depth', key: 'length', value: 'length', rows: [[3, 2]] };
  const net = networkOf([
    { id: 'a-lifts', finds: lifts, by: over(depth, thickest), bothWays: false },
    { id: 'b-thickest', finds: thickest, by: lookup(depth, table), bothWays: false },
    { id: 'c-lift', finds: lift, by: over(depth, lifts), bothWays: false },
  ]);
  const last = { ...assumed('thickest', 1, 'in'), last: true };
  const ground = overlaid(bareGround(net), { facts: [last, assumed('depth', 2, 'in')] });
  expect([ground.get('thickest')?.value, ground.get('lifts')?.value]).toEqual([2, 1]);
  const deep = overlaid(ground, { facts: [said('depth', 4, 'in')] });
  expect([deep.get('thickest')?.value, deep.get('lifts')?.value, deep.get('lift')?.value]).toEqual([1, 4, 1]);
  expect(deep.get('lifts')?.assumed).toEqual(['thickest']);
});

test('only what new facts touch is worked out again', () => {
  const ground = overlaid(bareGround(patch), { facts: [...defaults, said('area', 400, 'yd2')] });
  const layer = overlaid(ground, { facts: [said('depth', 2, 'in')] });
  expect(layer.get('area')).toBe(ground.get('area'));
  expect(layer.get('weight')).toBe(ground.get('weight'));
  expect(ground.has('mass')).toBe(false);
  expect(layer.has('mass')).toBe(true);
});
