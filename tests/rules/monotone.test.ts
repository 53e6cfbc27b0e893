import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Unit } from '../../src/calc/units.ts';
import { found } from './facts.ts';

const sizes = { length: [10, 2000], width: [4, 40], depth: [0.25, 6], payload: [5, 30], weight: [90, 130] } as const;
const between = ([low, high]: readonly [number, number]) => fc.double({ min: low, max: high, noNaN: true });
const patch = fc.record({
  length: between(sizes.length),
  width: between(sizes.width),
  depth: between(sizes.depth),
  payload: between(sizes.payload),
  weight: between(sizes.weight),
});
type Patch = { readonly [name in keyof typeof sizes]: number };

const work = (p: Patch, quantity: string, unit: Unit): number =>
  found(
    {
      'patch-length': [p.length, 'ft'],
      'patch-width': [p.width, 'ft'],
      'patch-depth': [p.depth, 'in'],
      'truck-payload': [p.payload, 'ton'],
      'unit-weight': [p.weight, 'lb/yd2/in'],
    },
    quantity,
    unit,
  );

/** What more of something can never make less (1) or more (-1). */
const senses: readonly (readonly [more: keyof Patch, of: string, unit: Unit, sense: 1 | -1])[] = [
  ['length', 'premix-mass', 'ton', 1],
  ['width', 'premix-mass', 'ton', 1],
  ['depth', 'premix-mass', 'ton', 1],
  ['weight', 'premix-mass', 'ton', 1],
  ['length', 'premix-order', 'ton', 1],
  ['depth', 'premix-order', 'ton', 1],
  ['depth', 'lift-count', '1', 1],
  ['depth', 'truck-count', '1', 1],
  ['payload', 'truck-count', '1', -1],
  ['payload', 'load-length', 'ft', 1],
  ['depth', 'load-length', 'ft', -1],
  ['width', 'load-length', 'ft', -1],
  ['width', 'dump-spacing', 'ft', -1],
  ['depth', 'length-per-ton', 'ft', -1],
];

describe('more of one thing', () => {
  test.each(senses)('%s: %s never goes the wrong way', (more, quantity, unit, sense) => {
    fc.assert(
      fc.property(patch, fc.double({ min: 1, max: 1.5, noNaN: true }), (p, by) => {
        const before = work(p, quantity, unit);
        const after = work({ ...p, [more]: p[more] * by }, quantity, unit);
        expect(sense * (after - before)).toBeGreaterThanOrEqual(-1e-9 * before);
      }),
      { numRuns: 60 },
    );
  });
});

test('lifts are never thicker than the thickest, and never more than it takes', () => {
  fc.assert(
    fc.property(patch, (p) => {
      const [count, thickness] = [work(p, 'lift-count', '1'), work(p, 'lift-thickness', 'in')];
      expect(count).toBeGreaterThanOrEqual(1);
      expect(thickness).toBeLessThanOrEqual(1 + 1e-9);
      expect(p.depth / Math.max(count - 1, 1e-9)).toBeGreaterThan(1 - 1e-9);
    }),
    { numRuns: 60 },
  );
});

test('what is ordered is never less than what goes in', () => {
  fc.assert(
    fc.property(patch, (p) => {
      expect(work(p, 'premix-order', 'ton')).toBeGreaterThan(work(p, 'premix-mass', 'ton'));
    }),
    { numRuns: 60 },
  );
});
