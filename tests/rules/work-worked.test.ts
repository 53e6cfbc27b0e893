import { describe, expect, test } from 'vitest';
import { judgePractice } from '../../src/rules/judge.ts';
import { knowledge } from '../../src/rules/knowledge.ts';
import { found, solved } from './facts.ts';

const lane = { 'patch-width': [12, 'ft'], 'patch-length': [300, 'ft'] } as const;
const inch = { 'lift-thickness': [1, 'in'] } as const;
const two = { 'patch-depth': [2, 'in'] } as const;
const by = (facts: Parameters<typeof solved>[0], id: string): string | undefined =>
  solved(facts).get(id)?.by?.relation.id;

describe('tack', () => {
  test('a rate that was said is worked back from, before any residual is assumed', () => {
    // 0.15 gal/yd² at the 60 % assumed leaves 0.09.
    expect(found({ 'tack-rate': [0.15, 'gal/yd2'] }, 'tack-residual', 'gal/yd2')).toBeCloseTo(0.09, 12);
    // 600 gal on 6,000 yd² is 0.1, of which 60 % stays.
    const shot = { 'tack-used': [600, 'gal'], 'patch-area': [6000, 'yd2'] } as const;
    expect(found(shot, 'tack-residual', 'gal/yd2')).toBeCloseTo(0.06, 12);
  });

  test('with no rate the surface says what residual is assumed', () => {
    const assumed = (surface: string) => found({ surface }, 'tack-residual', 'gal/yd2');
    expect([assumed('worn'), assumed('fresh-lift'), assumed('cut')].map((rate) => rate.toFixed(3))).toEqual([
      '0.050',
      '0.030',
      '0.060',
    ]);
    expect(solved({ surface: 'cut' }).get('tack-residual')?.assumed).toEqual(['tack-residual']);
  });

  test('one part water to one of emulsion: as much water as emulsion', () => {
    const cut = { 'emulsion-volume': [600, 'gal'], dilution: [50, '%'] } as const;
    expect(found(cut, 'water-volume', 'gal')).toBeCloseTo(600, 9);
    expect(found(cut, 'tack-volume', 'gal')).toBeCloseTo(1200, 9);
  });

  test('the bar is as wide as the patch until it is said otherwise, and then no one is contradicted', () => {
    expect(found(lane, 'spray-width', 'ft')).toBeCloseTo(12, 12);
    expect(found({ ...lane, 'spray-width': [6, 'ft'] }, 'spray-width', 'ft')).toBeCloseTo(6, 12);
  });
});

describe('the row', () => {
  test('is for all lifts while only a depth is known, for one lift where a lift is named', () => {
    // 12 ft × 2 in × 1.25 and 12 ft × 1 in × 1.25.
    expect(found({ ...lane, ...two }, 'windrow-section', 'ft2')).toBeCloseTo(2.5, 9);
    expect(found({ ...lane, ...inch }, 'windrow-section', 'ft2')).toBeCloseTo(1.25, 9);
    expect(found({ ...lane, ...two, ...inch }, 'windrow-section', 'ft2')).toBeCloseTo(1.25, 9);
  });

  test('holds the tons of what it is for', () => {
    // 12 × 100 ft ÷ 9 × 110 lb ÷ 2,000 an inch.
    expect(found({ ...lane, ...two }, 'windrow-mass-per-100ft', 'ton')).toBeCloseTo(44 / 3, 9);
    expect(found({ ...lane, ...two, ...inch }, 'windrow-mass-per-100ft', 'ton')).toBeCloseTo(22 / 3, 9);
  });

  test('goes by the loose weight only where one is given', () => {
    // 146.67 lb a foot ÷ 105 lb/ft³ and ÷ 110 × twice.
    const weighed = { 'row-loose': [105, 'lb/ft3'] } as const;
    expect(found({ ...lane, ...inch, ...weighed }, 'windrow-section', 'ft2')).toBeCloseTo(1760 / 12 / 105, 6);
    expect(found({ ...lane, ...two, ...weighed }, 'windrow-section', 'ft2')).toBeCloseTo((2 * 1760) / 12 / 105, 6);
    expect(by({ ...lane, ...inch }, 'windrow-section')).toBe('windrow-section');
  });

  test('is what was measured, when it was measured', () => {
    const row = { 'windrow-base': [3, 'ft'], 'windrow-height': [1, 'ft'], 'patch-width': [12, 'ft'] } as const;
    // 1.5 ft² over 12 ft is 1.5 in loose; ÷ 1.25.
    expect(found(row, 'row-depth', 'in')).toBeCloseTo(1.2, 9);
    expect(by({ ...row, 'row-loose': [105, 'lb/ft3'] }, 'row-depth')).toBe('row-depth-weighed');
    // A rounded row of the same size holds a third more.
    expect(found({ ...row, 'windrow-shape': 'parabola' }, 'windrow-section', 'ft2')).toBeCloseTo(2, 9);
  });
});

describe('time and trucks', () => {
  test('turns are counted one by one, or in the share of the hour, never both', () => {
    const run = { 'grader-passes': [6, '1'], 'work-distance': [264, 'ft'], 'grader-speed': [3, 'mph'] } as const;
    // A minute a pass: 6 ÷ 0.6, and 6 × (1 + 0.5).
    expect(found(run, 'grading-time', 'min')).toBeCloseTo(10, 9);
    expect(found({ ...run, 'turn-time': [0.5, 'min'] }, 'grading-time', 'min')).toBeCloseTo(9, 9);
  });

  test('passes that are not said are the fewest the width needs', () => {
    // 12 ft is 2 strips of 10.4 ft less a foot, for each of 2 lifts.
    expect(found({ ...lane, ...two }, 'grader-passes', '1')).toBe(4);
    expect(found({ ...lane, ...two, 'grader-passes': [7, '1'] }, 'grader-passes', '1')).toBe(7);
  });

  test('the strips at 45 degrees are shown beside those at 30', () => {
    const { low, high, value } = solved({ 'patch-width': [16, 'ft'] }).get('blade-passes')!;
    // 15 ÷ 9.39 is 1.6, 15 ÷ 7.49 is 2.003.
    expect([low, value, high]).toEqual([2, 2, 3]);
  });

  test('back as fast as out, and nobody waits, unless it is said', () => {
    const haul = {
      'haul-distance': [10, 'mi'],
      'haul-speed': [40, 'mph'],
      'load-time': [8, 'min'],
      'unload-time': [7, 'min'],
    } as const;
    expect(found(haul, 'cycle-time', 'min')).toBeCloseTo(45, 9);
    expect(found({ ...haul, 'return-speed': [60, 'mph'], 'wait-time': [5, 'min'] }, 'cycle-time', 'min')).toBeCloseTo(
      45,
      9,
    );
  });

  test('a job without its tack is said to be so', () => {
    const job = {
      'material-cost': [6800, 'USD'],
      'labor-cost': [2736, 'USD'],
      'equipment-cost': [3720, 'USD'],
    } as const;
    expect(by(job, 'job-cost')).toBe('job-cost-no-tack');
    expect(by({ ...job, 'tack-cost': [240, 'USD'] }, 'job-cost')).toBe('job-cost');
  });
});

describe('a hot lift', () => {
  const lift = { ...inch, 'mix-temperature': [300, 'degF'] } as const;
  test('cools by the road it lies on and the air, each standing in for the other', () => {
    const at = (facts: object) => found({ ...lift, ...facts }, 'time-to-roll', 'min');
    const road = { 'base-temperature': [60, 'degF'] } as const;
    const air = { 'air-temperature': [60, 'degF'] } as const;
    expect(at(road)).toBeCloseTo(at({ ...road, ...air }), 9);
    expect(at(air)).toBeCloseTo(at({ ...road, ...air }), 9);
    expect(at({ 'surface-temperature': [60, 'degF'] })).toBeCloseTo(at(road), 9);
    expect(at({ ...road, 'air-temperature': [90, 'degF'] })).toBeGreaterThan(at(road));
  });

  test('is an estimate to a quarter either way', () => {
    const { low, value, high } = solved({ ...lift, 'base-temperature': [60, 'degF'] }).get('time-to-roll')!;
    expect([low / value, high / value].map((share) => share.toFixed(6))).toEqual(['0.750000', '1.250000']);
  });

  test('has no end on a road as warm as the stop', () => {
    expect(solved({ ...lift, 'base-temperature': [180, 'degF'] }).has('time-to-roll')).toBe(false);
  });
});

describe('rules on how it is done, where they differ by case', () => {
  const cases = [...knowledge.practices.values()].flatMap((rule) =>
    (rule.examples ?? []).map((example) => [rule, example] as const),
  );
  test('there are some', () => expect(cases.length).toBeGreaterThan(0));
  test.each(cases.map(([rule, example]) => [`${rule.id}: ${JSON.stringify(example.facts)}`, rule, example] as const))(
    '%s',
    (_, rule, { facts, is }) => {
      expect(judgePractice(rule, solved(facts)).status).toBe(is);
    },
  );
});

describe('worked by hand, from what a crew would say', () => {
  const sprayed = { 'spray-width': [12, 'ft'] } as const;
  test.each([
    // 12 × 1,000 ÷ 9 = 1,333.33 yd²; 0.05 ÷ 0.60 = 0.08333 gal/yd²
    [
      'tack for 12 × 1,000 ft',
      { 'patch-width': [12, 'ft'], 'patch-length': [1000, 'ft'] },
      'tack-volume',
      1000 / 9,
      'gal',
    ],
    // 12 × 200 ÷ 9 = 266.67 yd² × 0.08333
    ['tack for 12 × 200 ft', { 'patch-width': [12, 'ft'], 'patch-length': [200, 'ft'] }, 'tack-volume', 200 / 9, 'gal'],
    // 0.04 ÷ (0.60 × 0.50)
    [
      '0.04 residual, 60 %, one to one',
      { 'tack-residual': [0.04, 'gal/yd2'], residue: [60, '%'], dilution: [50, '%'] },
      'tack-rate',
      0.4 / 3,
      'gal/yd2',
    ],
    // 610 × 9 ÷ (5,250 × 11)
    [
      '610 gal on 5,250 × 11 ft',
      { 'tack-volume': [610, 'gal'], 'patch-length': [5250, 'ft'], 'patch-width': [11, 'ft'] },
      'tack-rate',
      5490 / 57_750,
      'gal/yd2',
    ],
    // 9 × 600 ÷ (0.08 × 12)
    [
      'a 600 gal tank at 0.08',
      { ...sprayed, 'tank-volume': [600, 'gal'], 'tack-rate': [0.08, 'gal/yd2'] },
      'tack-run-length',
      5625,
      'ft',
    ],
    // 9 × 40 ÷ (12 × 0.06)
    [
      '40 gal/min at 0.06',
      { ...sprayed, 'pump-rate': [40, 'gal/min'], 'tack-rate': [0.06, 'gal/yd2'] },
      'distributor-speed',
      500,
      'ft/min',
    ],
    // 12 × √3 ÷ 2
    [
      '12 ft blade at 30°',
      { 'blade-length': [12, 'ft'], 'blade-angle': [30, 'deg'] },
      'blade-reach',
      6 * Math.sqrt(3),
      'ft',
    ],
    // 6 × 0.25 ÷ (3 × 0.60)
    [
      '6 passes of a quarter mile',
      {
        'grader-passes': [6, '1'],
        'patch-length': [0.25, 'mi'],
        'grader-speed': [3, 'mph'],
        'grader-efficiency': [60, '%'],
      },
      'grading-time',
      5 / 6,
      'h',
    ],
    // (12 + 1 − 0.5) ÷ (4.5 − 0.5) = 3.125, so 4; × 4
    ['4.5 ft drum on 12 ft', { 'patch-width': [12, 'ft'], 'drum-width': [4.5, 'ft'] }, 'roller-lanes', 4, '1'],
    [
      '4 times over',
      { 'patch-width': [12, 'ft'], 'drum-width': [4.5, 'ft'], 'roller-coverages': [4, '1'] },
      'roller-passes',
      16,
      '1',
    ],
  ] as const)('%s', (_, facts, quantity, worked, unit) => {
    expect(found(facts, quantity, unit)).toBeCloseTo(worked, 8);
  });
});
