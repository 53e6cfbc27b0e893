import { describe, expect, test } from 'vitest';
import { problemFrom } from '../../src/ask/quiz/make/problem.ts';
import { problems } from '../../src/ask/quiz/problems.ts';
import { knowledge } from '../../src/rules/knowledge.ts';
import type { Facts } from '../../src/rules/shapes.ts';

const us = { 'speed-unit': 'us' } as const;

/** Worked examples as published: their figures made into items, whose key must be the answer printed. */
const published: readonly (readonly [
  problem: string,
  facts: Facts,
  printed: number,
  within: number,
  source: string,
])[] = [
  [
    'roller-lanes',
    { 'patch-width': [12, 'ft'], 'roller-overhang': [6, 'in'], 'roller-overlap': [6, 'in'], 'drum-width': [4.5, 'ft'] },
    4,
    0,
    'reprinted trade article on rollers',
  ],
  [
    'roller-lanes',
    { 'patch-width': [12, 'ft'], 'roller-overhang': [6, 'in'], 'roller-overlap': [6, 'in'], 'drum-width': [7, 'ft'] },
    2,
    0,
    'the same article',
  ],
  [
    'merging-taper-fast',
    { 'posted-speed': [55, 'mph'], offset: [12, 'ft'], ...us },
    660,
    0,
    'California MUTCD 2026, Table 6B-3(CA)',
  ],
  [
    'merging-taper-fast',
    { 'posted-speed': [45, 'mph'], offset: [12, 'ft'], ...us },
    540,
    0,
    'California MUTCD 2026, Table 6B-3(CA)',
  ],
  [
    'merging-taper-slow',
    { 'posted-speed': [40, 'mph'], offset: [12, 'ft'], ...us },
    320,
    0,
    'California MUTCD 2026, Table 6B-3(CA)',
  ],
  ['shifting-taper', { 'merging-taper': [660, 'ft'] }, 330, 0, 'California MUTCD 2026, Table 6B-3(CA), 55 mph'],
  ['shoulder-taper', { 'merging-taper': [660, 'ft'] }, 220, 0, 'California MUTCD 2026, Table 6B-3(CA), 55 mph'],
  ['cone-spacing', { 'posted-speed': [55, 'mph'] }, 110, 0, 'ATSSA replacement chart to the law enforcement guide'],
  [
    'sprayed-rate',
    { 'tack-residual': [0.04, 'gal/yd2'], residue: [200 / 3, '%'], dilution: [100, '%'] },
    0.06,
    0.00005,
    'trade article on tack rates',
  ],
  [
    'tack-used',
    { 'tack-used': [610, 'gal'], 'tack-area': [57_750, 'ft2'] },
    0.095,
    0.0005,
    'Virginia DOT, HMA-8, problem 1',
  ],
  ['loose-depth', { 'lift-thickness': [2, 'in'], 'roll-down': [1.25, '1'] }, 2.5, 0, 'NAPA handbook 7.5'],
  [
    'trucks-to-keep-up',
    { 'cycle-time': [131, 'min'], 'lay-time': [10, 'min'] },
    14,
    0,
    'NAPA handbook 6.2: 13.1 means 14',
  ],
  [
    'spread-rate',
    { 'unit-weight': [101.28, 'lb/yd2/in'], 'patch-depth': [1.5, 'in'] },
    151.92,
    0.05,
    'Florida DOT final-estimates slides',
  ],
  [
    'tons',
    {
      'patch-length': [650, 'ft'],
      'patch-width': [110, 'ft'],
      'patch-depth': [2, 'in'],
      'unit-weight': [147, 'lb/ft3'],
    },
    875.875,
    0.05,
    'Subcourse EN5459: 650 × 110 × 2 × 147 ÷ 24,000',
  ],
];

describe('a published worked example made into an item has the printed answer for its key', () => {
  test.each(published)('%s %j', (id, facts, printed, within) => {
    const problem = problems.find((each) => each.id === id)!;
    const draft = problemFrom({ knowledge, units: 'us' }, problem, facts)!;
    expect(Math.abs(Number(draft.item.key) - printed)).toBeLessThanOrEqual(within);
    expect(draft.item.stem).not.toMatch(/\{|undefined/);
    expect(draft.unsaid).toEqual([]);
  });
});
