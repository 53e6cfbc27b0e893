import type { Regression } from './premix-regression.ts';

const measured = { 'windrow-base': [3, 'ft'], 'windrow-height': [1, 'ft'] } as const;
const weighed = { 'row-loose': [105, 'lb/ft3'], 'unit-weight': [110, 'lb/yd2/in'] } as const;
const inchOf12 = { 'patch-width': [12, 'ft'], 'lift-thickness': [1, 'in'] } as const;
/** Side of a row that stands at 40 degrees: 1 ÷ tan 40°. */
const at40 = { 'side-slope': [1.191754, '1'] } as const;

/** Worked out apart from this project, from the geometry. */
export const windrowRegressions: readonly Regression[] = [
  {
    what: 'peaked row 3 × 1 ft',
    given: { ...measured, 'windrow-shape': 'triangle' },
    finds: 'windrow-section',
    worked: [1.5, 'ft2'],
    within: 0.006,
  },
  {
    what: 'rounded row 3 × 1 ft',
    given: { ...measured, 'windrow-shape': 'parabola' },
    finds: 'windrow-section',
    worked: [2, 'ft2'],
    within: 0.006,
  },
  {
    what: 'flat row, 3 ft below, 1 ft on top, 1 ft high',
    given: { ...measured, 'windrow-top': [1, 'ft'], 'windrow-shape': 'trapezoid' },
    finds: 'windrow-section',
    worked: [2, 'ft2'],
    within: 0.006,
  },
  {
    what: 'flat row, 3 ft below, 1 ft on top, 0.6 ft high',
    given: {
      'windrow-base': [3, 'ft'],
      'windrow-top': [1, 'ft'],
      'windrow-height': [0.6, 'ft'],
      'windrow-shape': 'trapezoid',
    },
    finds: 'windrow-section',
    worked: [1.2, 'ft2'],
    within: 1e-9,
  },
  {
    what: 'tons in 100 ft of row for 12 ft × 1 in at 110',
    given: { ...inchOf12, 'unit-weight': [110, 'lb/yd2/in'] },
    finds: 'windrow-mass-per-100ft',
    worked: [7.333, 'ton'],
    within: 0.001,
  },
  {
    what: 'the same in one foot',
    given: { ...inchOf12, 'unit-weight': [110, 'lb/yd2/in'] },
    finds: 'windrow-mass-per-100ft',
    worked: [14667, 'lb'],
    within: 1,
  },
  {
    what: 'tons in 100 ft for 10 ft × 1 in at 145 lb/ft³: 120.83 lb a foot',
    given: { 'patch-width': [10, 'ft'], 'lift-thickness': [1, 'in'], 'unit-weight': [145, 'lb/ft3'] },
    finds: 'windrow-mass-per-100ft',
    worked: [12083, 'lb'],
    within: 1,
  },
  {
    what: 'height of 146.67 lb a foot at 105 lb/ft³, sides at 40°',
    given: { ...inchOf12, ...weighed, ...at40 },
    finds: 'windrow-height',
    worked: [1.083, 'ft'],
    within: 0.005,
  },
  {
    what: 'its base',
    given: { ...inchOf12, ...weighed, ...at40 },
    finds: 'windrow-base',
    worked: [2.58, 'ft'],
    within: 0.005,
  },
  {
    what: 'row of 14 tons, 1.5 ft² at 105 lb/ft³',
    given: { 'truck-payload': [14, 'ton'], 'windrow-section': [1.5, 'ft2'], 'row-loose': [105, 'lb/ft3'] },
    finds: 'windrow-length',
    worked: [177.8, 'ft'],
    within: 0.1,
  },
  {
    what: 'depth that a row of 1.5 ft² at 105 lb/ft³ lays over 12 ft',
    given: { 'windrow-section': [1.5, 'ft2'], 'patch-width': [12, 'ft'], ...weighed },
    finds: 'row-depth',
    worked: [1.074, 'in'],
    within: 0.002,
  },
  {
    what: 'loose area for 10 ft × 1 in at a roll-down of 1.25',
    given: { 'patch-width': [10, 'ft'], 'lift-thickness': [1, 'in'], 'roll-down': [1.25, '1'] },
    finds: 'windrow-section',
    worked: [1.0417, 'ft2'],
    within: 0.0001,
  },
  {
    what: 'height of 1.0417 ft² at 1.5 to 1',
    given: { 'windrow-section': [1.041667, 'ft2'], 'side-slope': [1.5, '1'] },
    finds: 'windrow-height',
    worked: [10, 'in'],
    within: 0.001,
  },
  {
    what: 'base of 1.0417 ft² at 1.5 to 1',
    given: { 'windrow-section': [1.041667, 'ft2'], 'side-slope': [1.5, '1'] },
    finds: 'windrow-base',
    worked: [2.5, 'ft'],
    within: 0.001,
  },
  {
    what: 'height for 12 ft × 3/4 in at 1.25 and 1.5 to 1',
    given: {
      'patch-width': [12, 'ft'],
      'lift-thickness': [0.75, 'in'],
      'roll-down': [1.25, '1'],
      'side-slope': [1.5, '1'],
    },
    finds: 'windrow-height',
    worked: [9.49, 'in'],
    within: 0.01,
  },
  {
    what: 'height of 1.0417 ft² at 1.25 to 1',
    given: { 'windrow-section': [1.041667, 'ft2'], 'side-slope': [1.25, '1'] },
    finds: 'windrow-height',
    worked: [10.95, 'in'],
    within: 0.01,
  },
  {
    what: 'depth that 1.2 ft² lays over 10 ft at 1.25',
    given: { 'windrow-section': [1.2, 'ft2'], 'patch-width': [10, 'ft'], 'roll-down': [1.25, '1'] },
    finds: 'row-depth',
    worked: [1.152, 'in'],
    within: 0.001,
  },
];
