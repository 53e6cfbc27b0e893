import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type LookupTable, lookup, over, times } from '../../src/calc/expression.ts';
import { fromBase, toBase } from '../../src/calc/quantity.ts';
import { derivation, type Known, restsOn, type Solution, solve } from '../../src/calc/solve.ts';
import type { Unit } from '../../src/calc/units.ts';
import { networks } from './networks.ts';
import {
  area,
  assumed,
  defaults,
  depth,
  length,
  mass,
  networkOf,
  patch,
  said,
  thickest,
  weight,
  width,
} from './patch.ts';

const figure = (solved: Solution, id: string, unit: Unit): number => fromBase(solved.get(id)!.value, unit);
const range = (solved: Solution, id: string, unit: Unit): number[] => {
  const { low, high } = solved.get(id)!;
  return [fromBase(low, unit), fromBase(high, unit)];
};

/** 24 × 300 ft, an inch deep: 800 sq yd × 110 lb ÷ 2,000 = 44 tons, by hand. */
const bigPatch = [said('length', 300, 'ft'), said('width', 24, 'ft'), said('depth', 1, 'in')];

describe('a chain of relations', () => {
  const solved = solve(patch, [...bigPatch, ...defaults]);

  test('is followed to its end', () => {
    expect(figure(solved, 'area', 'yd2')).toBeCloseTo(800, 9);
    expect(figure(solved, 'mass', 'ton')).toBeCloseTo(44, 9);
    expect(figure(solved, 'order', 'ton')).toBeCloseTo(46.2, 9);
    expect(figure(solved, 'loads', '1')).toBe(3);
    expect(figure(solved, 'lifts', '1')).toBe(1);
  });

  test('is kept as a derivation, each step after those it rests on', () => {
    expect(derivation(solved, 'order').map(({ id, by }) => [id, by?.relation.id])).toEqual([
      ['area', 'area'],
      ['mass', 'mass'],
      ['order', 'order'],
    ]);
    expect([...restsOn(solved, ['loads'])].sort()).toEqual(
      ['area', 'depth', 'length', 'loads', 'mass', 'payload', 'weight', 'width'].sort(),
    );
  });

  test('carries the defaults it rests on', () => {
    expect(solved.get('area')!.assumed).toEqual([]);
    expect(solved.get('mass')!.assumed).toEqual(['weight']);
    expect([...solved.get('order')!.assumed].sort()).toEqual(['waste', 'weight']);
  });

  test('goes the other way when other facts are known', () => {
    const back = solve(patch, [
      said('mass', 36.5, 'ton'),
      said('length', 250, 'ft'),
      said('width', 24, 'ft'),
      ...defaults,
    ]);
    // 36.5 × 2,000 ÷ (24 × 250 ÷ 9) ÷ 110, by hand
    expect(figure(back, 'depth', 'in')).toBeCloseTo(0.99545, 5);
  });

  test('stops where something is missing', () => {
    const part = solve(patch, [said('length', 300, 'ft'), said('width', 24, 'ft')]);
    expect(Array.from(part, ([id]) => id).sort()).toEqual(['area', 'length', 'width']);
  });
});

describe('of several ways', () => {
  test('what was said goes before what is assumed', () => {
    const solved = solve(patch, [...bigPatch, said('weight', 147, 'lb/ft3'), ...defaults]);
    expect(figure(solved, 'weight', 'lb/ft3')).toBeCloseTo(147, 9);
    expect(solved.get('mass')!.assumed).toEqual([]);
  });

  test('what follows from what was said goes before what is assumed', () => {
    const solved = solve(patch, [...bigPatch, said('mass', 48, 'ton'), ...defaults]);
    expect(figure(solved, 'weight', 'lb/yd2/in')).toBeCloseTo(120, 9);
    expect(solved.get('weight')!.by?.relation.id).toBe('mass');
    expect(solved.get('weight')!.assumed).toEqual([]);
  });

  test('the one with fewer steps is taken', () => {
    const net = networkOf([
      { id: 'a-area', finds: area, by: times(length, width) },
      { id: 'b-long', finds: depth, by: over(area, width) },
      { id: 'c-short', finds: depth, by: times(thickest, 2) },
    ]);
    const facts = [said('length', 1, 'in'), said('width', 3, 'in'), said('thickest', 1, 'in')];
    expect(solve(net, facts).get('depth')!.by?.relation.id).toBe('c-short');
  });

  test('one of second choice is taken only where there is no other', () => {
    const rough = { id: 'a-rough', finds: depth, by: times(thickest, 2), second: true };
    const net = networkOf([
      rough,
      { id: 'b-sure', finds: depth, by: over(area, width) },
      { id: 'c-area', finds: area, by: times(length, width) },
    ]);
    const facts = [said('length', 1, 'in'), said('width', 3, 'in'), said('thickest', 1, 'in')];
    expect(solve(net, facts).get('depth')!.by?.relation.id).toBe('b-sure');
    expect(solve(net, facts.slice(2)).get('depth')!.by?.relation.id).toBe('a-rough');
  });

  test('of equals the first by id is taken', () => {
    const net = networkOf([
      { id: 'b', finds: depth, by: times(thickest, 2) },
      { id: 'a', finds: depth, by: times(width, 2) },
    ]);
    const facts = [said('width', 1, 'in'), said('thickest', 3, 'in')];
    expect(solve(net, facts).get('depth')!.by?.relation.id).toBe('a');
    expect(solve(net, [...facts].reverse()).get('depth')!.by?.relation.id).toBe('a');
  });

  test('one that has no answer leaves the field to another', () => {
    const table: LookupTable = { id: 'short', key: 'length', value: 'length', rows: [[10, 5]] };
    const net = networkOf([
      { id: 'a-table', finds: depth, by: lookup(width, table) },
      { id: 'b-other', finds: depth, by: over(area, length) },
    ]);
    const facts = [said('width', 11, 'in'), said('area', 6, 'ft2'), said('length', 3, 'ft')];
    expect(solve(net, facts).get('depth')!.by?.relation.id).toBe('b-other');
    expect(solve(net, facts.slice(0, 1)).has('depth')).toBe(false);
    expect(solve(net, [said('width', 10, 'in'), ...facts.slice(1)]).get('depth')!.by?.relation.id).toBe('a-table');
  });

  test('dividing by nothing is no answer', () => {
    expect(solve(patch, [said('mass', 10, 'ton'), said('payload', 0, 'ton')]).has('loads')).toBe(false);
  });
});

describe('a fact given twice', () => {
  test('the first one said stands, else the last one assumed', () => {
    const twice = [said('depth', 2, 'in'), said('depth', 3, 'in')];
    expect(figure(solve(patch, twice), 'depth', 'in')).toBe(2);
    expect(figure(solve(patch, [assumed('depth', 1, 'in'), ...twice]), 'depth', 'in')).toBe(2);
    expect(figure(solve(patch, [...twice, assumed('depth', 1, 'in')]), 'depth', 'in')).toBe(2);
    expect(figure(solve(patch, [assumed('depth', 1, 'in'), assumed('depth', 3, 'in')]), 'depth', 'in')).toBe(3);
  });
});

test('a fact that no relation knows is there all the same', () => {
  expect(solve(patch, [said('wind', 10, 'mph')]).get('wind')!.value).toBe(toBase(10, 'mph'));
});

describe('ranges', () => {
  test('of a default go through to the result and leave the figure as it is', () => {
    const solved = solve(patch, [...bigPatch, ...defaults]);
    // 800 sq yd at 105 and at 120 lb an inch, by hand
    expect(range(solved, 'mass', 'ton').map((tons) => tons.toFixed(3))).toEqual(['42.000', '48.000']);
    expect(figure(solved, 'mass', 'ton')).toBeCloseTo(44, 9);
  });

  test('that were said and those of defaults are both in it', () => {
    const deep = said('depth', 1.5, 'in', [1, 2]);
    const solved = solve(patch, [...bigPatch.slice(0, 2), deep, ...defaults]);
    expect(range(solved, 'mass', 'ton').map((tons) => tons.toFixed(3))).toEqual(['42.000', '96.000']);
    const { saidLow, saidHigh } = solved.get('mass')!;
    expect([fromBase(saidLow, 'ton'), fromBase(saidHigh, 'ton')].map((tons) => tons.toFixed(3))).toEqual([
      '44.000',
      '88.000',
    ]);
  });

  test('what is counted takes the high end of a range that was said', () => {
    const solved = solve(patch, [...bigPatch.slice(0, 2), said('depth', 1.5, 'in', [1, 2]), ...defaults]);
    // 88 tons in 15 ton loads; 2 in of 1 in lifts
    expect(figure(solved, 'loads', '1')).toBe(6);
    expect(figure(solved, 'lifts', '1')).toBe(2);
  });

  test('but not that of a default: 44 tons are 3 loads, though 48 would be 4', () => {
    const solved = solve(patch, [...bigPatch, ...defaults]);
    expect(figure(solved, 'loads', '1')).toBe(3);
    expect(range(solved, 'loads', '1')).toEqual([3, 4]);
  });

  test('of a count that was said itself: 2 or 3 loads is 3', () => {
    const solved = solve(patch, [said('loads', 2.5, '1', [2, 3])]);
    expect(figure(solved, 'loads', '1')).toBe(3);
    expect(range(solved, 'loads', '1')).toEqual([2, 3]);
  });

  test('low end, figure and high end stand in that order', () => {
    const solved = solve(patch, [
      said('length', 300, 'ft', [280, 320]),
      said('width', 24, 'ft'),
      said('depth', 1.25, 'in', [1, 1.5]),
      ...defaults,
    ]);
    for (const [, { low, value, high, saidLow, saidHigh }] of solved) {
      expect([low, saidLow, value, saidHigh, high]).toEqual(
        [low, saidLow, value, saidHigh, high].sort((a, b) => a - b),
      );
    }
  });
});

test('a bandless default makes soft, one with a band does not', () => {
  const solved = solve(patch, [...bigPatch, ...defaults]);
  expect(solved.get('loads')!.soft).toBe(true);
  expect(solved.get('mass')!.soft).toBe(false);
});

describe('laws, on random networks', () => {
  const shuffled = networks.chain(({ net, values }) => {
    const known = [...values].map(([id, value]): Known => ({ id, value }));
    return fc.record({
      net: fc.constant(net),
      values: fc.constant(values),
      known: fc.shuffledSubarray(known, { minLength: 2 }),
      softFrom: fc.nat(known.length),
    });
  });

  test('the order of the facts never changes the result', () => {
    fc.assert(
      fc.property(shuffled, ({ net, known, softFrom }) => {
        const facts = known.map((fact, i) => (i >= softFrom ? { ...fact, assumed: true } : fact));
        const sorted = [...facts].sort((a, b) => (a.id < b.id ? -1 : 1));
        const [one, other] = [solve(net, facts), solve(net, sorted)];
        expect([...one]).toEqual([...other]);
      }),
      { seed: 44, numRuns: 500 },
    );
  });

  test('every figure worked out is the one that all relations agree on', () => {
    fc.assert(
      fc.property(shuffled, ({ net, known, values }) => {
        for (const [id, { value }] of solve(net, known)) {
          expect(Math.abs(value - values.get(id)!)).toBeLessThanOrEqual(1e-6 * Math.abs(values.get(id)!));
        }
      }),
      { seed: 44, numRuns: 500 },
    );
  });

  test('each fact left out in turn comes back from the others', () => {
    fc.assert(
      fc.property(networks, ({ net, values }) => {
        for (const [id, value] of values) {
          const others = [...values].flatMap(([other, figure]) => (other === id ? [] : [{ id: other, value: figure }]));
          const back = solve(net, others).get(id);
          expect(back !== undefined).toBe(net.finding.has(id));
          if (back) expect(Math.abs(back.value - value)).toBeLessThanOrEqual(1e-6 * Math.abs(value));
        }
      }),
      { seed: 44, numRuns: 300 },
    );
  });

  test('asking twice gives the same twice', () => {
    fc.assert(
      fc.property(shuffled, ({ net, known }) => {
        expect([...solve(net, known)]).toEqual([...solve(net, known)]);
      }),
      { seed: 44, numRuns: 100 },
    );
  });
});

test('depth, weight and mass of a real patch, each dropped in turn', () => {
  const facts = [
    said('area', 71500, 'ft2'),
    said('depth', 2, 'in'),
    said('weight', 147, 'lb/ft3'),
    said('mass', 875.875, 'ton'),
  ];
  for (const { id, value } of facts) {
    const back = solve(
      networkOf([{ id: 'mass', finds: mass, by: times(area, depth, weight) }]),
      facts.filter((fact) => fact.id !== id),
    );
    expect(back.get(id)!.value / value).toBeCloseTo(1, 9);
  }
});
