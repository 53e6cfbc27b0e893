import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { power, times } from '../../src/calc/expression.ts';
import { type Known, missing, type Network, solve } from '../../src/calc/solve.ts';
import { networks } from './networks.ts';
import { area, assumed, defaults, depth, length, mass, networkOf, patch, said, weight, width } from './patch.ts';

/** Length, width and depth come off a tape; an area or tons somebody has to have worked out. */
const ease = new Map([
  ['length', 1],
  ['width', 1],
  ['depth', 1],
  ['area', 3],
  ['mass', 4],
]);
const ask = (goal: string, known: readonly Known[] = []): string[] | undefined =>
  missing(patch, [...known, ...defaults], goal, ease);

describe('what is missing for a patch', () => {
  test('from nothing: what a tape can tell, the easiest first', () => {
    expect(ask('mass')?.sort()).toEqual(['depth', 'length', 'width']);
    expect(ask('order')?.sort()).toEqual(['depth', 'length', 'width']);
    expect(ask('lifts')).toEqual(['depth']);
    expect(missing(patch, defaults, 'mass', new Map([...ease, ['area', 1], ['depth', 2]]))).toEqual(['area', 'depth']);
  });

  test('only what is not known yet', () => {
    const size = [said('length', 300, 'ft'), said('width', 12, 'ft')];
    expect(ask('mass', size)).toEqual(['depth']);
    expect(ask('mass', [...size, said('depth', 1, 'in')])).toEqual([]);
    expect(ask('depth', [said('mass', 20, 'ton')])?.sort()).toEqual(['length', 'width']);
    expect(ask('mass', [said('area', 200, 'yd2')])).toEqual(['depth']);
  });

  test('never a default, and never the goal itself', () => {
    expect(ask('weight')).toEqual([]);
    expect(missing(patch, [], 'mass', new Map([['mass', 1]]))).toBeUndefined();
    expect(ask('mass', [assumed('mass', 10, 'ton')])).toEqual([]);
  });

  test('what is known already needs nothing, even where no relation knows it', () => {
    expect(ask('depth', [said('depth', 1, 'in')])).toEqual([]);
    expect(ask('wind', [said('wind', 10, 'mph')])).toEqual([]);
  });

  test('nothing that can be asked leads there', () => {
    expect(ask('left')).toBeUndefined();
    expect(ask('no such thing')).toBeUndefined();
    expect(missing(patch, [], 'mass', ease)).toBeUndefined();
  });

  test('a figure that two branches need is asked once: width is easier than the area once the length is asked', () => {
    const shared = new Map([
      ['length', 1],
      ['width', 1],
      ['area', 2],
      ['depth', 1],
    ]);
    expect(missing(patch, defaults, 'mass', shared)?.reduce((sum, id) => sum + shared.get(id)!, 0)).toBe(3);
  });

  test('a figure that follows from two others is spared', () => {
    const net = networkOf([
      { id: 'area', finds: area, by: times(length, width) },
      { id: 'heap', finds: mass, by: times(length, width, area, weight, power(depth, -1)) },
    ]);
    const each = new Map(['length', 'width', 'area', 'depth'].map((id) => [id, 1]));
    expect(missing(net, defaults, 'mass', each)).toHaveLength(3);
  });
});

/** All that follows from a set, by trying every method until nothing is new. */
function reaches(net: Network, from: Iterable<string>, goal: string): boolean {
  const have = new Set(from);
  for (let size = -1; size !== have.size; ) {
    size = have.size;
    for (const { finds, needs } of net.methods) if (needs.every((id) => have.has(id))) have.add(finds);
  }
  return have.has(goal);
}

function subsets(ids: readonly string[]): string[][] {
  return Array.from({ length: 2 ** ids.length }, (_, mask) => ids.filter((_, i) => (mask >> i) & 1));
}

const asking = networks.chain(({ net, values }) => {
  const ids = [...values.keys()];
  return fc.record({
    net: fc.constant(net),
    values: fc.constant(values),
    goal: fc.constantFrom(...ids),
    known: fc.subarray(ids, { maxLength: 3 }),
    troubles: fc.array(fc.integer({ min: 1, max: 3 }), { minLength: ids.length, maxLength: ids.length }),
    askable: fc.subarray(ids),
  });
});

describe('laws, on random networks', () => {
  test('the set suffices, none of it can be spared, and there is one whenever there can be', () => {
    fc.assert(
      fc.property(asking, ({ net, values, goal, known, troubles, askable }) => {
        const ease = new Map(askable.map((id, i) => [id, troubles[i]!]));
        const facts = known.map((id) => ({ id, value: values.get(id)! }));
        const wanted = missing(net, facts, goal, ease);
        expect(wanted !== undefined).toBe(reaches(net, [...known, ...askable.filter((id) => id !== goal)], goal));
        if (!wanted) return;
        const told = (ids: readonly string[]): Known[] => [
          ...facts,
          ...ids.map((id) => ({ id, value: values.get(id)! })),
        ];
        expect(solve(net, told(wanted)).get(goal)!.value / values.get(goal)!).toBeCloseTo(1, 6);
        for (const spared of wanted) {
          expect(solve(net, told(wanted.filter((id) => id !== spared))).has(goal)).toBe(false);
        }
      }),
      { seed: 44, numRuns: 500 },
    );
  });

  /** Where facts are shared in a tangle the cheapest set can be missed; it must be rare. */
  test('the set is the cheapest one, checked against every subset', () => {
    let [all, cheapest] = [0, 0];
    fc.assert(
      fc.property(asking, ({ net, goal, known, troubles, askable }) => {
        const ease = new Map(askable.map((id, i) => [id, troubles[i]!]));
        const wanted = missing(
          net,
          known.map((id) => ({ id, value: 1 })),
          goal,
          ease,
        );
        if (!wanted) return;
        const troubleOf = (ids: readonly string[]): number => ids.reduce((sum, id) => sum + ease.get(id)!, 0);
        const others = askable.filter((id) => id !== goal && !known.includes(id));
        const ways = subsets(others).filter((set) => reaches(net, [...known, ...set], goal));
        const least = Math.min(...ways.map(troubleOf));
        all++;
        if (troubleOf(wanted) === least) cheapest++;
      }),
      { seed: 44, numRuns: 400 },
    );
    expect(all).toBeGreaterThan(150);
    expect(cheapest / all).toBeGreaterThan(0.97);
  });
});
