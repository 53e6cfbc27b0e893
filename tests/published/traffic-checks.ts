import type { Unit } from '../../src/calc/units.ts';
import type { Facts } from '../../src/rules/shapes.ts';

/** One figure that has to come out. `ours`: worked out by us from published parts, so a guard against change, not a proof. */
export interface TrafficCheck {
  readonly what: string;
  readonly facts: Facts;
  readonly finds: readonly [quantity: string, number: number, unit: Unit];
  /** How it is written in the source: up to a whole foot, or to so many decimals. */
  readonly as?: 'rounded up' | 2;
  readonly source: string;
  readonly ours?: true;
}

const us = { 'speed-unit': 'us' } as const;
const metric = { 'speed-unit': 'metric' } as const;
const formulas = 'MUTCD 11th ed. (FHWA, 2023), Table 6B-4; seen in a secondary copy';
const kinds = 'MUTCD 11th ed., Table 6B-3; seen in a secondary copy';
const metricForm = 'MUTCD 2003, Table 6H-4, p. 6H-5; the divisor 155 unreadable there and taken as 60 × 1.609² = 155.4';
const spacing = 'MUTCD 11th ed., section 6K.01, paragraph 4, and section 6B.08; seen in a restatement';
const text = 'MUTCD 11th ed., section 6B.04; seen in a restatement';

const merging = (width: number, mph: number): Facts => ({ ...us, offset: [width, 'ft'], 'posted-speed': [mph, 'mph'] });
const mergingMetric = (width: number, kmh: number): Facts => ({
  ...metric,
  offset: [width, 'm'],
  'posted-speed': [kmh, 'km/h'],
});
const line = (length: number, apart: number): Facts => ({
  'device-run': [length, 'ft'],
  'device-spacing': [apart, 'ft'],
});
export const trafficChecks: readonly TrafficCheck[] = [
  {
    what: 'freeway, A + B + C',
    facts: { 'road-type': 'expressway' },
    finds: ['advance-length', 5140, 'ft'],
    source: 'MUTCD 11th ed., Table 6B-1: 1,000 + 1,500 + 2,640',
  },

  { what: 'L, 10 ft at 55 mph', facts: merging(10, 55), finds: ['merging-taper', 550, 'ft'], source: formulas },
  {
    what: 'L, 11 ft at 35 mph',
    facts: merging(11, 35),
    finds: ['merging-taper', 224.58, 'ft'],
    as: 2,
    source: formulas,
  },
  {
    what: 'L, 11 ft at 35 mph, whole feet',
    facts: merging(11, 35),
    finds: ['merging-taper', 225, 'ft'],
    as: 'rounded up',
    source: formulas,
  },
  { what: 'L, 10 ft at 30 mph', facts: merging(10, 30), finds: ['merging-taper', 150, 'ft'], source: formulas },
  {
    what: 'shifting taper, 12 ft at 55 mph',
    facts: merging(12, 55),
    finds: ['shifting-taper', 330, 'ft'],
    source: kinds,
  },
  {
    what: 'shifting taper, 6 ft at 50 mph',
    facts: merging(6, 50),
    finds: ['shifting-taper', 150, 'ft'],
    source: kinds,
  },
  {
    what: 'shoulder taper, 12 ft at 55 mph',
    facts: merging(12, 55),
    finds: ['shoulder-taper', 220, 'ft'],
    source: kinds,
  },
  {
    what: 'shoulder taper, 8 ft at 60 mph',
    facts: merging(8, 60),
    finds: ['shoulder-taper', 160, 'ft'],
    source: kinds,
  },
  {
    what: 'shoulder taper, 10 ft at 55 mph',
    facts: merging(10, 55),
    finds: ['shoulder-taper', 184, 'ft'],
    as: 'rounded up',
    source: kinds,
  },
  {
    what: '42 mph is read in the row for 45',
    facts: merging(12, 42),
    finds: ['merging-taper', 540, 'ft'],
    source: formulas,
    ours: true,
  },
  {
    what: 'both formulas agree at 60 mph',
    facts: merging(12, 60),
    finds: ['merging-taper', (12 * 60 ** 2) / 60, 'ft'],
    source: formulas,
  },

  {
    what: 'metric L, 3.6 m at 50 km/h',
    facts: mergingMetric(3.6, 50),
    finds: ['merging-taper', 59, 'm'],
    as: 'rounded up',
    source: metricForm,
  },
  {
    what: 'metric L, 3.6 m at 60 km/h',
    facts: mergingMetric(3.6, 60),
    finds: ['merging-taper', 84, 'm'],
    as: 'rounded up',
    source: metricForm,
  },
  {
    what: 'metric L, 3.6 m at 80 km/h',
    facts: mergingMetric(3.6, 80),
    finds: ['merging-taper', 180, 'm'],
    source: metricForm,
  },
  {
    what: 'metric L, 3.6 m at 100 km/h',
    facts: mergingMetric(3.6, 100),
    finds: ['merging-taper', 225, 'm'],
    source: metricForm,
  },
  {
    what: 'metric: 65 km/h is read in the row for 70',
    facts: mergingMetric(3.6, 65),
    finds: ['merging-taper', 157.5, 'm'],
    source: metricForm,
    ours: true,
  },

  {
    what: 'devices on 660 ft at 55 mph',
    facts: { 'taper-length': [660, 'ft'], 'posted-speed': [55, 'mph'] },
    finds: ['device-count', 13, '1'],
    source: spacing,
  },
  {
    what: 'devices on 320 ft at 40 mph',
    facts: { 'taper-length': [320, 'ft'], 'posted-speed': [40, 'mph'] },
    finds: ['device-count', 9, '1'],
    source: spacing,
  },
  {
    what: 'devices on 540 ft at 45 mph',
    facts: { 'taper-length': [540, 'ft'], 'posted-speed': [45, 'mph'] },
    finds: ['device-count', 13, '1'],
    source: spacing,
  },
  {
    what: 'devices on 225 ft at 35 mph',
    facts: { 'taper-length': [225, 'ft'], 'posted-speed': [35, 'mph'] },
    finds: ['device-count', 8, '1'],
    source: spacing,
  },
  {
    what: 'devices on a 100 ft flagger taper at 55 mph',
    facts: { 'taper-length': [100, 'ft'], 'taper-kind': 'flagger', 'posted-speed': [55, 'mph'] },
    finds: ['device-count', 6, '1'],
    source: spacing,
  },
  {
    what: 'devices on a 50 ft downstream taper',
    facts: { 'taper-length': [50, 'ft'], 'taper-kind': 'downstream' },
    finds: ['device-count', 4, '1'],
    source: spacing,
  },
  {
    what: 'a 100 ft taper of a kind not said gets no fewer',
    facts: { 'taper-length': [100, 'ft'], 'posted-speed': [55, 'mph'] },
    finds: ['device-count', 6, '1'],
    source: spacing,
    ours: true,
  },
  {
    what: 'devices on 660 ft at 50 ft, as California caps it',
    facts: { 'taper-length': [660, 'ft'], 'device-spacing': [50, 'ft'] },
    finds: ['device-count', 15, '1'],
    source: 'California MUTCD 2026, Table 6K-101(CA)',
  },
  {
    what: 'devices on 1,495 ft of tangent at 55 mph',
    facts: { 'device-run': [1495, 'ft'], 'posted-speed': [55, 'mph'] },
    finds: ['device-count', 15, '1'],
    source: spacing,
  },
  {
    what: 'devices on 1,495 ft at 110 ft',
    facts: line(1495, 110),
    finds: ['device-count', 15, '1'],
    source: '14 spaces, 15 devices',
  },

  {
    what: 'nearest sign in town at 30 mph, least',
    facts: { 'road-type': 'urban-low', 'posted-speed': [30, 'mph'] },
    finds: ['sign-nearest-least', 120, 'ft'],
    source: text,
  },
  {
    what: 'nearest sign in town at 30 mph, most',
    facts: { 'road-type': 'urban-low', 'posted-speed': [30, 'mph'] },
    finds: ['sign-nearest-most', 240, 'ft'],
    source: text,
  },
  {
    what: 'nearest rural sign at 55 mph, least',
    facts: { 'road-type': 'rural', 'posted-speed': [55, 'mph'] },
    finds: ['sign-nearest-least', 440, 'ft'],
    source: text,
  },
  {
    what: 'nearest rural sign at 55 mph, most',
    facts: { 'road-type': 'rural', 'posted-speed': [55, 'mph'] },
    finds: ['sign-nearest-most', 660, 'ft'],
    source: text,
  },
  {
    what: 'nearest rural sign at 65 mph: more than the table',
    facts: { 'road-type': 'rural', 'posted-speed': [65, 'mph'] },
    finds: ['sign-nearest-least', 520, 'ft'],
    source: text,
  },
];
