import type { Unit } from '../../src/calc/units.ts';
import type { Facts } from '../../src/rules/shapes.ts';

/**
 * Regression checks: no book prints these answers. The arithmetic was done apart from this project, by the formula and
 * the figures in `what`; they only catch a change.
 */
export interface Regression {
  readonly what: string;
  readonly given: Facts;
  readonly finds: string;
  readonly worked: readonly [number, Unit];
  readonly within: number;
}

const at110 = { 'unit-weight': [110, 'lb/yd2/in'] } as const;
const size = (width: number, length: number, depth: number): Facts => ({
  'patch-width': [width, 'ft'],
  'patch-length': [length, 'ft'],
  'patch-depth': [depth, 'in'],
});

export const regressions: readonly Regression[] = [
  {
    what: 'EN5459 plant-mix example (inputs printed): 650 × 110 ft × 2 in × 147 lb/ft³ ÷ 24,000',
    given: { ...size(110, 650, 2), 'unit-weight': [147, 'lb/ft3'] },
    finds: 'premix-mass',
    worked: [875.9, 'ton'],
    within: 0.05,
  },
  {
    what: '24 × 300 ft × 1 in: 800 yd² × 110 ÷ 2,000',
    given: { ...size(24, 300, 1), ...at110 },
    finds: 'premix-mass',
    worked: [44, 'ton'],
    within: 0.01,
  },
  {
    what: '44 tons and 5 %',
    given: { 'premix-mass': [44, 'ton'], waste: [5, '%'] },
    finds: 'premix-order',
    worked: [46.2, 'ton'],
    within: 0.01,
  },
  {
    what: '12 × 150 ft × 3/4 in',
    given: { ...size(12, 150, 0.75), ...at110 },
    finds: 'premix-mass',
    worked: [8.25, 'ton'],
    within: 0.01,
  },
  {
    what: 'a lane mile, 12 ft × 1 in',
    given: { ...size(12, 5280, 1), ...at110 },
    finds: 'premix-mass',
    worked: [387.2, 'ton'],
    within: 0.1,
  },
  {
    what: '3.6 × 100 m × 25 mm × 2.35 t/m³, in short tons',
    given: {
      'patch-width': [3.6, 'm'],
      'patch-length': [100, 'm'],
      'patch-depth': [25, 'mm'],
      'unit-weight': [2350, 'kg/m3'],
    },
    finds: 'premix-mass',
    worked: [23.31, 'ton'],
    within: 0.01,
  },
  {
    what: 'a short ton at 1 in',
    given: { ...at110, 'patch-depth': [1, 'in'] },
    finds: 'area-per-ton',
    worked: [18.18, 'yd2'],
    within: 0.005,
  },
  {
    what: 'a short ton at 1 in, in square feet',
    given: { ...at110, 'patch-depth': [1, 'in'] },
    finds: 'area-per-ton',
    worked: [163.6, 'ft2'],
    within: 0.05,
  },
  {
    what: '14 tons at 1 in, 12 ft wide',
    given: { ...at110, 'truck-payload': [14, 'ton'], 'patch-width': [12, 'ft'], 'patch-depth': [1, 'in'] },
    finds: 'load-length',
    worked: [190.9, 'ft'],
    within: 0.05,
  },
  {
    what: '36.5 tons on 24 × 250 ft',
    given: { ...at110, 'placed-mass': [36.5, 'ton'], 'patch-width': [24, 'ft'], 'patch-length': [250, 'ft'] },
    finds: 'placed-depth',
    worked: [0.995, 'in'],
    within: 0.001,
  },
  {
    what: '101.2 tons on 12 × 1,200 ft, as weight on the square yard',
    given: { 'placed-mass': [101.2, 'ton'], 'patch-width': [12, 'ft'], 'patch-length': [1200, 'ft'] },
    finds: 'placed-rate',
    worked: [126.5, 'lb/yd2'],
    within: 0.05,
  },
  {
    what: '101.2 tons on 12 × 1,200 ft, as a depth',
    given: { ...at110, 'placed-mass': [101.2, 'ton'], 'patch-width': [12, 'ft'], 'patch-length': [1200, 'ft'] },
    finds: 'placed-depth',
    worked: [1.15, 'in'],
    within: 0.001,
  },
  {
    what: '80 ft at 1 1/2 in and two 20 ft feathers, 12 ft wide: as 100 ft',
    given: { ...size(12, 80, 1.5), ...at110, 'feather-length': [20, 'ft'], 'feather-count': [2, '1'] },
    finds: 'premix-mass',
    worked: [11, 'ton'],
    within: 0.01,
  },
  {
    what: 'rut 3 ft × 1 in × 500 ft by a triangle, one path',
    given: {
      ...at110,
      'rut-fill': [50, '%'],
      'rut-width': [3, 'ft'],
      'rut-depth': [1, 'in'],
      'rut-length': [500, 'ft'],
    },
    finds: 'premix-mass',
    worked: [4.583, 'ton'],
    within: 0.001,
  },
  {
    what: 'rut 3 ft × 1 in × 500 ft by a parabola, volume',
    given: { 'rut-width': [3, 'ft'], 'rut-depth': [1, 'in'], 'rut-length': [500, 'ft'] },
    finds: 'rut-volume',
    worked: [83.33, 'ft3'],
    within: 0.01,
  },
  {
    what: 'the same, both paths, in tons',
    given: {
      ...at110,
      'rut-width': [3, 'ft'],
      'rut-depth': [1, 'in'],
      'rut-length': [500, 'ft'],
      'rut-count': [2, '1'],
    },
    finds: 'premix-mass',
    worked: [12.22, 'ton'],
    within: 0.006,
  },
  {
    what: '2 1/2 in at lifts of an inch',
    given: { 'deepest-depth': [2.5, 'in'] },
    finds: 'lift-count',
    worked: [3, '1'],
    within: 0,
  },
  {
    what: '2 1/2 in in equal lifts',
    given: { 'deepest-depth': [2.5, 'in'] },
    finds: 'lift-thickness',
    worked: [0.833, 'in'],
    within: 0.001,
  },
  {
    what: '1 in loose at 1.25',
    given: { 'lift-loose': [1, 'in'], 'roll-down': [1.25, '1'] },
    finds: 'lift-thickness',
    worked: [0.8, 'in'],
    within: 0.001,
  },
  {
    what: '1 in rolled at 1.15, the factor of open mixes',
    given: { 'lift-thickness': [1, 'in'], 'roll-down': [1.15, '1'] },
    finds: 'lift-loose',
    worked: [1.15, 'in'],
    within: 0.001,
  },
  {
    what: '1.5 × 3/8 in stone',
    given: { 'stone-size': [0.375, 'in'] },
    finds: 'lift-min',
    worked: [0.5625, 'in'],
    within: 1e-9,
  },
  {
    what: '4 × 9.5 mm, coarse-graded',
    given: { 'mix-nominal-size': [9.5, 'mm'], 'mix-gradation': 'coarse' },
    finds: 'lift-min-dense',
    worked: [1.5, 'in'],
    within: 0.01,
  },
  {
    what: '3 × 19 mm, fine-graded',
    given: { 'mix-nominal-size': [19, 'mm'], 'mix-gradation': 'fine' },
    finds: 'lift-min-dense',
    worked: [2.24, 'in'],
    within: 0.01,
  },
  {
    what: '8 × 12.5 mm, coarse-graded',
    given: { 'mix-nominal-size': [12.5, 'mm'], 'mix-gradation': 'coarse' },
    finds: 'lift-max-dense',
    worked: [3.94, 'in'],
    within: 0.01,
  },
  {
    what: 'a 40 ton truck less 16 empty: 80,000 − 32,000 lb',
    given: { 'posted-weight': [80000, 'lb'], 'truck-tare': [32000, 'lb'] },
    finds: 'legal-payload',
    worked: [24, 'ton'],
    within: 1e-9,
  },
];
