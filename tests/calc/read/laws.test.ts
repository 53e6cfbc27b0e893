import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { toBase } from '../../../src/calc/quantity.ts';
import { read } from '../../../src/calc/read/read.ts';
import { figures, short } from './reads.ts';

describe('unit equivalence', () => {
  it('one patch in three ways is one volume', () => {
    const volumes = [`12 ft x 50 yd x 1-1/2"`, `12' x 150' x 1.5 in`, '3.6576 m x 45.72 m x 38.1 mm'].map((text) =>
      figures(text).reduce((volume, f) => volume * toBase(f.number, f.unit!), 1),
    );
    // 144 in x 1,800 in x 1.5 in
    for (const volume of volumes) expect(Math.abs(volume / 388_800 - 1)).toBeLessThan(1e-9);
  });
});

describe('order', () => {
  it('of sizes named by a word does not matter', () => {
    const size = fc.integer({ min: 1, max: 900 });
    const parts = fc.tuple(size, size, size).chain(([wide, long, deep]) =>
      fc.shuffledSubarray(
        [
          [`${wide} ft wide`, wide, 'ft', 'wide'],
          [`${long} feet long`, long, 'ft', 'long'],
          [`${deep} in deep`, deep, 'in', 'deep'],
        ] as const,
        { minLength: 3 },
      ),
    );
    fc.assert(
      fc.property(parts, fc.constantFrom(', ', ' and ', ' x ', '; ', ' '), (shuffled, joiner) => {
        const items = read(shuffled.map(([text]) => text).join(joiner));
        const said = items.flatMap((item, k) => {
          const next = items[k + 1];
          return item.kind === 'figure' ? [[item.number, item.unit, next?.kind === 'word' ? next.text : '']] : [];
        });
        expect(said).toEqual(shuffled.map(([, number, unit, role]) => [number, unit, role]));
      }),
    );
  });
});

describe('idempotent', () => {
  it('a reading put into words reads as itself', () => {
    const echo = 'Read as: 12 ft wide x 150 ft long x 1.5 in. Change?';
    expect(figures(echo).map((f) => [f.number, f.unit])).toEqual([
      [12, 'ft'],
      [150, 'ft'],
      [1.5, 'in'],
    ]);
  });
});

describe('numbers in words', () => {
  it.each([
    ['two-lane road', 'two-lane road'],
    ['2 lane road', 'two-lane road'],
    ['4-lane', 'four-lane'],
    ['three-axle dump', 'three-axle dump'],
    ['2 lanes', '[2] lanes'],
    ['1st lift', '1st lift'],
    ['12-wide', '[12] wide'],
    ['the 3-lift patch', 'the three-lift patch'],
  ])('%s', (text, want) => {
    expect(short(text)).toBe(want);
  });
});
