import { describe, expect, test } from 'vitest';
import { judgeLimit } from '../../src/rules/judge.ts';
import { knowledge } from '../../src/rules/knowledge.ts';
import { found, solved } from './facts.ts';

/** Questions of a crew, each worked by hand beside it, with the defaults where nothing is said: 110 lb/yd²/in, 5 %, 2 ft, 1 in. */
describe('premix questions worked by hand', () => {
  test('300 × 12 ft at 2 in', () => {
    // 300 × 12 ÷ 9 = 400 yd²; × 2 × 110 = 88,000 lb; ÷ 2,000 = 44 tons
    const facts = { 'patch-length': [300, 'ft'], 'patch-width': [12, 'ft'], 'patch-depth': [2, 'in'] } as const;
    expect(found(facts, 'premix-mass', 'ton')).toBeCloseTo(44, 9);
    expect(found(facts, 'patch-area', 'yd2')).toBeCloseTo(400, 9);
    expect(found(facts, 'patch-volume', 'yd3')).toBeCloseTo(600 / 27, 9);
    expect(found(facts, 'lift-count', '1')).toBe(2);
    expect(found(facts, 'lift-mass', 'ton')).toBeCloseTo(22, 9);
    // 44 ÷ 15 = 2.93, so 3 loads; to order (304 × 12 ÷ 9 × 220 ÷ 2,000) × 1.05 = 46.82, so 4
    expect(found(facts, 'truck-count', '1')).toBe(3);
    expect(found(facts, 'order-loads', '1')).toBe(4);
  });

  test('what to order for 12 × 150 ft, an inch and a half', () => {
    // (150 + 2 × 2) × 12 ÷ 9 = 205.33 yd²; × 1.5 × 110 ÷ 2,000 = 16.94 tons; × 1.05 = 17.787
    const facts = { 'patch-length': [150, 'ft'], 'patch-width': [12, 'ft'], 'patch-depth': [1.5, 'in'] } as const;
    expect(found(facts, 'premix-order', 'ton')).toBeCloseTo(17.787, 9);
    expect(found(facts, 'premix-mass', 'ton')).toBeCloseTo(16.5, 9);
  });

  test('what to order where only the area is known', () => {
    // 200 yd² × 2 × 110 ÷ 2,000 = 22 tons; × 1.05 = 23.1, nothing for the ends
    const facts = { 'patch-area': [200, 'yd2'], 'patch-depth': [2, 'in'] } as const;
    expect(found(facts, 'premix-order', 'ton')).toBeCloseTo(23.1, 9);
    expect(solved(facts).get('premix-order')?.by?.relation.id).toBe('premix-order-tons');
    expect(solved(facts).get('premix-order')?.assumed).toContain('order-ends=left-out');
  });

  test('200 square yards at 2 in', () => {
    // 200 × 2 × 110 ÷ 2,000 = 22
    expect(found({ 'patch-area': [200, 'yd2'], 'patch-depth': [2, 'in'] }, 'premix-mass', 'ton')).toBeCloseTo(22, 9);
  });

  test('lifts for a hole 3 in deep, and for one of 2 1/4 in', () => {
    // 3 ÷ 1 = 3 lifts of 1 in; 2.25 ÷ 1, rounded up, = 3 lifts of 0.75 in
    expect(found({ 'patch-depth': [3, 'in'] }, 'lift-count', '1')).toBe(3);
    expect(found({ 'patch-depth': [3, 'in'] }, 'lift-thickness', 'in')).toBeCloseTo(1, 9);
    expect(found({ 'patch-depth': [2.25, 'in'] }, 'lift-count', '1')).toBe(3);
    expect(found({ 'patch-depth': [2.25, 'in'] }, 'lift-thickness', 'in')).toBeCloseTo(0.75, 9);
    // 76 mm is just under three inches, 77 mm just over
    expect(found({ 'patch-depth': [76, 'mm'] }, 'lift-count', '1')).toBe(3);
    expect(found({ 'patch-depth': [77, 'mm'] }, 'lift-count', '1')).toBe(4);
  });

  test('a 14 ton load, 12 ft wide at an inch', () => {
    // 28,000 lb ÷ 110 = 254.545 yd²; × 9 ÷ 12 = 190.909 ft
    const facts = { 'truck-payload': [14, 'ton'], 'patch-width': [12, 'ft'], 'patch-depth': [1, 'in'] } as const;
    expect(found(facts, 'load-length', 'ft')).toBeCloseTo(190.909091, 6);
    expect(found(facts, 'dump-spacing', 'ft')).toBeCloseTo(190.909091, 6);
    expect(found(facts, 'load-area', 'yd2')).toBeCloseTo(254.545455, 6);
    // 18,000 ÷ (12 × 110) = 13.636 ft a ton
    expect(found(facts, 'length-per-ton', 'ft')).toBeCloseTo(13.636364, 6);
  });

  test('36.5 tons put down on 24 × 250 ft', () => {
    // 73,000 lb ÷ 666.67 yd² = 109.5 lb/yd²; ÷ 110 = 0.995455 in
    const facts = { 'placed-mass': [36.5, 'ton'], 'patch-width': [24, 'ft'], 'patch-length': [250, 'ft'] } as const;
    expect(found(facts, 'placed-depth', 'in')).toBeCloseTo(0.995455, 6);
    expect(found(facts, 'placed-rate', 'lb/yd2')).toBeCloseTo(109.5, 9);
  });

  test('3.6 × 100 m at 25 mm of 2,350 kg/m³', () => {
    // 360 m² × 0.025 m × 2.35 t/m³ = 21.15 t
    const facts = {
      'patch-width': [3.6, 'm'],
      'patch-length': [100, 'm'],
      'patch-depth': [25, 'mm'],
      'unit-weight': [2350, 'kg/m3'],
    } as const;
    expect(found(facts, 'premix-mass', 't')).toBeCloseTo(21.15, 9);
  });

  test('60 tons in 14 ton trucks', () => {
    // 60 ÷ 14 = 4.29, rounded up
    expect(found({ 'premix-mass': [60, 'ton'], 'truck-payload': [14, 'ton'] }, 'truck-count', '1')).toBe(5);
  });

  test('loose for an inch rolled', () => {
    // 1 × 1.25; at the other end of the band 1 × 1.40
    const facts = { 'lift-thickness': [1, 'in'] } as const;
    expect(found(facts, 'lift-loose', 'in')).toBeCloseTo(1.25, 9);
    expect(solved(facts).get('lift-loose')?.high).toBeCloseTo(1.4, 9);
  });

  test('2 in in one lift is too thick, and a half-inch lift too thin for 3/4 stone', () => {
    const judge = (rule: string, facts: Parameters<typeof solved>[0]) =>
      judgeLimit(knowledge.limits.get(rule)!, solved(facts)).status;
    expect(judge('lift-max', { 'lift-thickness': [2, 'in'], 'lift-count': [1, '1'] })).toBe('stop');
    // 1.5 × 3/4 = 1 1/8 in
    const thin = { 'lift-thickness': [0.5, 'in'], 'stone-size': [0.75, 'in'] } as const;
    expect(judge('lift-min', thin)).toBe('stop');
    expect(judge('stone-fits-lift', thin)).toBe('caution');
  });

  test('two wheel path ruts 3 ft wide, 1 in deep, 500 ft long', () => {
    // 2/3 × 3 ft × 1/12 ft = 1/6 ft²; × 500 × 2 = 166.67 ft³ = 222.22 yd² an inch thick; × 110 ÷ 2,000 = 12.222
    const facts = {
      'rut-count': [2, '1'],
      'rut-width': [3, 'ft'],
      'rut-depth': [1, 'in'],
      'rut-length': [500, 'ft'],
    } as const;
    expect(found(facts, 'premix-mass', 'ton')).toBeCloseTo(12.222222, 6);
    // a sharp V is three quarters of it: 9.17 tons at 110, and 105 of 110 of that is 8.75
    expect(solved(facts).get('premix-mass')!.low / 2000).toBeCloseTo((9.1666667 * 105) / 110, 6);
  });
});

describe('shapes and ways beside the plain patch', () => {
  test('80 ft at an inch and a half and two 20 ft feathers count as 100 ft', () => {
    // 100 × 12 ÷ 9 × 1.5 × 110 ÷ 2,000 = 11
    const facts = {
      'patch-length': [80, 'ft'],
      'patch-width': [12, 'ft'],
      'patch-depth': [1.5, 'in'],
      'feather-length': [20, 'ft'],
    } as const;
    expect(found(facts, 'premix-mass', 'ton')).toBeCloseTo(11, 9);
    expect(found({ ...facts, 'feather-count': [2, '1'] }, 'premix-mass', 'ton')).toBeCloseTo(11, 9);
    // one feather: 90 ft, 9.9 tons
    expect(found({ ...facts, 'feather-count': [1, '1'] }, 'premix-mass', 'ton')).toBeCloseTo(9.9, 9);
    // three such patches: 33 tons
    expect(found({ ...facts, 'patch-count': [3, '1'] }, 'premix-mass', 'ton')).toBeCloseTo(33, 9);
  });

  test('like patches multiply the tons, and each has its own ends in the order', () => {
    const facts = {
      'patch-count': [3, '1'],
      'patch-width': [10, 'ft'],
      'patch-length': [20, 'ft'],
      'patch-depth': [1.5, 'in'],
    } as const;
    // 3 × 10 × 20 ÷ 9 × 165 ÷ 2,000 = 5.5; the order 3 × 10 × 24 ÷ 9 × 165 ÷ 2,000 × 1.05 = 6.93
    expect(found(facts, 'premix-mass', 'ton')).toBeCloseTo(5.5, 9);
    expect(found(facts, 'premix-order', 'ton')).toBeCloseTo(6.93, 9);
  });

  test('one patch assumes no count, so that tons and sizes can be held against each other', () => {
    const facts = { 'patch-width': [10, 'ft'], 'patch-length': [20, 'ft'], 'patch-depth': [1, 'in'] } as const;
    expect(solved(facts).get('premix-mass')?.assumed).toEqual(['unit-weight']);
  });

  test('the deepest spot sets the lifts, the average the tons', () => {
    const facts = { 'patch-area': [400, 'yd2'], 'patch-depth': [1, 'in'], 'deepest-depth': [2.5, 'in'] } as const;
    expect(found(facts, 'lift-count', '1')).toBe(3);
    expect(found(facts, 'premix-mass', 'ton')).toBeCloseTo(22, 9);
    expect(found(facts, 'lift-mass', 'ton')).toBeCloseTo(22 / 3, 9);
    expect(solved({ 'patch-area': [400, 'yd2'], 'deepest-depth': [2.5, 'in'] }).get('premix-mass')).toBeUndefined();
  });

  test('two lifts of an inch that were said are a depth of two', () => {
    const facts = { 'patch-area': [400, 'yd2'], 'lift-count': [2, '1'], 'lift-thickness': [1, 'in'] } as const;
    expect(found(facts, 'premix-mass', 'ton')).toBeCloseTo(44, 9);
  });

  test('lifts of three quarters in 2 in are three', () => {
    expect(found({ 'patch-depth': [2, 'in'], 'lift-thickness': [0.75, 'in'] }, 'lift-count', '1')).toBe(3);
  });

  test('what an asker said takes the place of a default', () => {
    // 13.75 tons at 110 become 12.5 at 100
    const facts = { 'patch-area': [250, 'yd2'], 'patch-depth': [1, 'in'] } as const;
    expect(found(facts, 'premix-mass', 'ton')).toBeCloseTo(13.75, 9);
    expect(found({ ...facts, 'unit-weight': [100, 'lb/yd2/in'] }, 'premix-mass', 'ton')).toBeCloseTo(12.5, 9);
    expect(found({ ...facts, 'lift-max': [0.5, 'in'] }, 'lift-count', '1')).toBe(2);
  });

  test('a roll-down measured on the first strip takes the place of the rule of thumb', () => {
    const facts = { 'lift-loose': [1.35, 'in'], 'lift-thickness': [1, 'in'] } as const;
    expect(found(facts, 'roll-down', '1')).toBeCloseTo(1.35, 9);
  });

  test('need less placed, by tickets or by loads', () => {
    const need = { 'patch-area': [400, 'yd2'], 'patch-depth': [2, 'in'] } as const;
    expect(found({ ...need, 'placed-mass': [30, 'ton'] }, 'tons-left', 'ton')).toBeCloseTo(14, 9);
    expect(found({ ...need, 'loads-placed': [2, '1'], 'truck-payload': [14, 'ton'] }, 'tons-left', 'ton')).toBeCloseTo(
      16,
      9,
    );
    expect(found({ ...need, 'placed-mass': [30, 'ton'] }, 'loads-left', '1')).toBe(1);
    expect(found({ ...need, 'placed-mass': [50, 'ton'] }, 'loads-left', '1')).toBe(0);
  });

  test('half-inch mix holds three-quarter stone, half-inch stone does not', () => {
    expect(found({ 'mix-nominal-size': [0.5, 'in'] }, 'lift-min', 'in')).toBeCloseTo(1.125, 9);
    expect(found({ 'stone-size': [0.5, 'in'] }, 'lift-min', 'in')).toBeCloseTo(0.75, 9);
  });

  test('level lifts in a dish take 19, 35 and 46 % from the bottom up', () => {
    const facts = { 'premix-mass': [100, 'ton'], 'patch-depth': [3, 'in'], 'patch-shape': 'dished' } as const;
    const first = found(facts, 'first-lift-mass', 'ton');
    const last = found(facts, 'last-lift-mass', 'ton');
    expect([first, 100 - first - last, last].map(Math.round)).toEqual([19, 35, 46]);
  });
});
