import type { Unit } from '../../src/calc/units.ts';
import type { Facts } from '../../src/rules/shapes.ts';

/** A worked example as a book prints it: who has the book can check the line without running anything. */
export interface Worked {
  readonly document: string;
  readonly place: string;
  readonly given: Facts;
  readonly finds: string;
  /** The answer as printed. */
  readonly printed: readonly [number, Unit];
  /** Half a unit of the last figure printed, in the unit printed. */
  readonly rounded: number;
}

const virginia = 'Virginia DOT, asphalt certification study guide, 2011 v1.0';
const florida = 'Florida DOT, asphalt final estimates, training slides';
const navy = 'US Navy, NAVEDTRA 14080, Equipment Operator training course';

export const published: readonly Worked[] = [
  {
    document: virginia,
    place: 'ch. 9, p. 9-2: length of spread, L = 9 × lb ÷ (W × R)',
    given: { 'truck-payload': [132940, 'lb'], 'patch-width': [26, 'ft'], 'spread-rate': [170, 'lb/yd2'] },
    finds: 'load-length',
    printed: [270.69, 'ft'],
    rounded: 0.005,
  },
  {
    document: virginia,
    place: 'ch. 9, p. 9-2: feet per ton, 18,000 ÷ (W × R)',
    given: { 'patch-width': [26, 'ft'], 'spread-rate': [170, 'lb/yd2'] },
    finds: 'length-per-ton',
    printed: [4.07, 'ft'],
    rounded: 0.005,
  },
  {
    document: florida,
    place: 'spread rate: 43.3 × Gmm for one inch',
    given: { 'max-specific-gravity': [2.339, '1'] },
    finds: 'unit-weight',
    printed: [101.28, 'lb/yd2/in'],
    rounded: 0.005,
  },
  {
    document: florida,
    place: 'spread rate: 43.3 × Gmm × thickness',
    given: { 'max-specific-gravity': [2.339, '1'], 'patch-depth': [1.5, 'in'] },
    finds: 'spread-rate',
    printed: [151.92, 'lb/yd2'],
    rounded: 0.005,
  },
  {
    document: 'National Asphalt Pavement Association, Asphalt Pavement Construction Handbook',
    place: '7.5: a 2 in mat is laid 25 % thicker',
    given: { 'lift-thickness': [2, 'in'], 'roll-down': [1.25, '1'] },
    finds: 'lift-loose',
    printed: [2.5, 'in'],
    rounded: 0,
  },
  {
    document: navy,
    place: 'p. 8-31: 1/8 in more for each inch, blocks of 2 1/4 in for a 2 in mat',
    given: { 'lift-thickness': [2, 'in'], 'roll-down': [1.125, '1'] },
    finds: 'lift-loose',
    printed: [2.25, 'in'],
    rounded: 0,
  },
  {
    document: 'US Department of Defense, UFC 3-270-01, Asphalt Maintenance and Repair, 15 March 2001',
    place: 'p. 9: 3 in rolled needs 4 1/4 in loose, about 40 % more (its millimetres are misprinted)',
    given: { 'lift-loose': [4.25, 'in'], 'lift-thickness': [3, 'in'] },
    finds: 'roll-down',
    printed: [1.4, '1'],
    rounded: 0.05,
  },
  {
    document: 'US Army / US Air Force, TM 5-822-14 / AFJMAN 32-1019, Soil Stabilization for Pavements',
    place: 'cold mix spread by blade: no layer under about 1.5 times the largest stone',
    given: { 'stone-size': [1, 'in'] },
    finds: 'lift-min',
    printed: [1.5, 'in'],
    rounded: 0,
  },
  {
    document: navy,
    place: 'p. 8-31: 110 lb/yd² an inch stands for 146 lb/ft³, here over 9 ft² × 12 in',
    given: { 'patch-area': [9, 'ft2'], 'patch-depth': [12, 'in'], 'unit-weight': [110, 'lb/yd2/in'] },
    finds: 'premix-mass',
    printed: [1320, 'lb'],
    rounded: 0,
  },
  {
    document: navy,
    place: 'p. 8-31: 146 lb/ft³ goes with 110 lb/yd² an inch, rounded',
    given: { 'unit-weight': [146, 'lb/ft3'] },
    finds: 'unit-weight',
    printed: [110, 'lb/yd2/in'],
    rounded: 0.5,
  },
];
