import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fromBase } from '../../src/calc/quantity.ts';
import { conflicts } from '../../src/rules/conflicts.ts';
import { knowledge } from '../../src/rules/knowledge.ts';
import type { Facts } from '../../src/rules/shapes.ts';
import { solved } from './facts.ts';

const odds = (facts: Facts, goal?: string): string[] =>
  conflicts(knowledge, solved(facts), goal).map(({ method }) => method.relation.id);

describe('figures that cannot all be so', () => {
  test('20 tons over 12 × 200 ft are not an inch', () => {
    // 266.7 yd² × 110 = 14.7 tons; even at 120 it is 16
    const facts = {
      'premix-mass': [20, 'ton'],
      'patch-length': [200, 'ft'],
      'patch-width': [12, 'ft'],
      'patch-depth': [1, 'in'],
    } as const;
    expect(odds(facts)).toContain('premix-mass');
    expect(odds({ ...facts, 'premix-mass': [15, 'ton'] })).toEqual([]);
  });

  test('what the mix weighs can be asked for', () => {
    const facts = { 'premix-mass': [20, 'ton'], 'patch-area': [200, 'yd2'], 'patch-depth': [1, 'in'] } as const;
    expect(odds(facts, 'unit-weight')).toEqual([]);
    // 40,000 lb ÷ 200 yd² ÷ 1 in
    expect(solved(facts).get('unit-weight')!.value * 1296).toBeCloseTo(200, 9);
  });

  test('an area that is not length by width', () => {
    const facts = { 'patch-area': [200, 'yd2'], 'patch-length': [100, 'ft'], 'patch-width': [12, 'ft'] } as const;
    expect(odds(facts)).toEqual(['patch-area']);
    expect(odds({ ...facts, 'patch-area': [133, 'yd2'] })).toEqual([]);
  });

  test('several patches are not held against the area of one', () => {
    const facts = {
      'patch-area': [400, 'yd2'],
      'patch-length': [100, 'ft'],
      'patch-width': [12, 'ft'],
      'patch-count': [3, '1'],
    } as const;
    expect(odds(facts)).toEqual([]);
    expect(odds({ ...facts, 'patch-area': [300, 'yd2'] })).toContain('patch-area-count');
  });

  test('two lifts of an inch are not three inches', () => {
    expect(
      odds({ 'patch-depth': [3, 'in'], 'lift-count': [2, '1'], 'lift-thickness': [1, 'in'] }).length,
    ).toBeGreaterThan(0);
  });
});

describe('a plan is no contradiction', () => {
  test.each<[string, Facts]>([
    ['more lifts than it takes', { 'patch-depth': [3, 'in'], 'lift-count': [4, '1'], 'lift-max': [1, 'in'] }],
    ['lifts of a thickness that was said', { 'patch-depth': [2, 'in'], 'lift-thickness': [0.75, 'in'] }],
    [
      'fewer loads than it takes',
      { 'premix-mass': [60, 'ton'], 'truck-payload': [14, 'ton'], 'truck-count': [3, '1'] },
    ],
    ['an order that is short', { 'premix-mass': [44, 'ton'], 'premix-order': [30, 'ton'], waste: [5, '%'] }],
    [
      'dumps closer than a load goes',
      {
        'truck-payload': [14, 'ton'],
        'patch-width': [12, 'ft'],
        'patch-depth': [1, 'in'],
        'dump-spacing': [100, 'ft'],
      },
    ],
    [
      'a deepest spot below the average',
      { 'patch-area': [400, 'yd2'], 'patch-depth': [1, 'in'], 'deepest-depth': [2.5, 'in'] },
    ],
    ['a roll-down that was measured', { 'lift-loose': [1.5, 'in'], 'lift-thickness': [1, 'in'] }],
    ['half-inch mix said to hold half-inch stone', { 'mix-nominal-size': [0.5, 'in'], 'stone-size': [0.5, 'in'] }],
  ])('%s', (_, facts) => expect(odds(facts)).toEqual([]));
});

test('ruts and a patch that give different tons are not both taken in silence', () => {
  const facts = {
    'patch-area': [400, 'yd2'],
    'patch-depth': [1, 'in'],
    'rut-depth': [1, 'in'],
    'rut-width': [3, 'ft'],
    'rut-length': [100, 'ft'],
  } as const;
  expect(odds(facts)).toContain('premix-mass-ruts');
});

/** Figures a foreman reads off one answer and types into the next question. */
const repeatable = [
  'patch-area',
  'patch-volume',
  'premix-mass',
  'premix-order',
  'spread-rate',
  'lift-count',
  'lift-thickness',
  'lift-loose',
  'lift-mass',
  'truck-count',
  'order-loads',
  'load-length',
  'load-area',
  'length-per-ton',
  'dump-spacing',
] as const;

test('what was worked out may be said back without a contradiction', () => {
  const size = (min: number, max: number) => fc.double({ min, max, noNaN: true });
  fc.assert(
    fc.property(
      size(10, 2000),
      size(4, 40),
      size(0.5, 6),
      fc.subarray([...repeatable]),
      (length, width, depth, said) => {
        const patch: Facts = {
          'patch-length': [length, 'ft'],
          'patch-width': [width, 'ft'],
          'patch-depth': [depth, 'in'],
        };
        const answer = solved(patch);
        const back = said.map((id) => {
          const { units } = knowledge.quantities.get(id)!;
          return [id, [fromBase(answer.get(id)!.value, units.us), units.us]] as const;
        });
        expect(odds({ ...patch, ...Object.fromEntries(back) })).toEqual([]);
      },
    ),
    { numRuns: 200 },
  );
});
