import { roundUp } from '../../calc/quantity.ts';
import { halfForOneAndHalf, loose, type Problem, roundDown, steps, takes, timesOver, tookOneInch } from './problem.ts';

const ton = 2000;
const length = ['ft', steps(90, 600, 30)] as const;
const width = ['ft', [8, 9, 10, 11, 12]] as const;
const depth = ['in', [1, 1.5, 2, 2.5, 3]] as const;
const weight = ['lb/yd2/in', [105, 110, 115, 120]] as const;

/** Tons, loads and lifts. */
export const mixProblems: readonly Problem[] = [
  {
    id: 'area',
    topics: ['mix', 'blade', 'tack'],
    level: 'easy',
    finds: 'patch-area',
    draws: { 'patch-length': length, 'patch-width': width },
    mistakes: { 'feet-not-yards': timesOver(9), 'linear-yards': timesOver(3), 'two-lanes': timesOver(2) },
  },
  {
    id: 'spread-rate',
    topics: ['mix'],
    level: 'easy',
    finds: 'spread-rate',
    draws: { 'unit-weight': weight, 'patch-depth': ['in', [1.5, 2, 2.5, 3]] },
    mistakes: {
      'took-one-inch': tookOneInch('patch-depth'),
      'half-for-one-and-half': halfForOneAndHalf('patch-depth'),
      'loose-for-rolled': timesOver(loose),
      'feet-not-yards': timesOver(1 / 9),
    },
  },
  {
    id: 'tons',
    topics: ['mix', 'blade'],
    level: 'medium',
    finds: 'premix-mass',
    draws: { 'patch-length': length, 'patch-width': width, 'patch-depth': depth, 'unit-weight': weight },
    mistakes: {
      'feet-not-yards': timesOver(9),
      'linear-yards': timesOver(3),
      'two-lanes': timesOver(2),
      'took-one-inch': tookOneInch('patch-depth'),
      'half-for-one-and-half': halfForOneAndHalf('patch-depth'),
      'loose-for-rolled': timesOver(loose),
      'long-ton': timesOver(ton / 2240),
    },
  },
  {
    id: 'tons-of-area',
    topics: ['mix'],
    level: 'easy',
    finds: 'premix-mass',
    draws: {
      'patch-area': ['yd2', steps(100, 900, 50)],
      'patch-depth': ['in', [1, 1.5, 2, 3]],
      'unit-weight': ['lb/yd2/in', [110]],
    },
    mistakes: {
      'took-one-inch': tookOneInch('patch-depth'),
      'half-for-one-and-half': halfForOneAndHalf('patch-depth'),
      'thousand-pounds': timesOver(2),
      'loose-for-rolled': timesOver(loose),
      'feet-not-yards': timesOver(1 / 9),
    },
  },
  {
    id: 'order',
    topics: ['mix', 'trucks'],
    level: 'medium',
    finds: 'premix-order',
    draws: { 'premix-mass': ['ton', steps(20, 120, 10)], waste: ['%', [5, 10, 15]] },
    settled: { 'order-ends': 'left-out' },
    mistakes: {
      'taken-off': ({ right, fact }) => (right * (1 - fact('waste'))) / (1 + fact('waste')),
      'tenfold-share': ({ right, fact }) => (right * (1 + 10 * fact('waste'))) / (1 + fact('waste')),
      'twice-added': ({ right, fact }) => (right * (1 + 3 * fact('waste'))) / (1 + fact('waste')),
    },
  },
  {
    id: 'yield-check',
    topics: ['mix', 'blade'],
    level: 'medium',
    finds: 'placed-depth',
    draws: {
      'placed-mass': ['ton', [11, 22, 33, 44]],
      'patch-area': ['yd2', [200, 400]],
      'unit-weight': ['lb/yd2/in', [110]],
    },
    fair: (fact) => fact('placed-mass') / fact('patch-area') < 0.27,
    mistakes: {
      'thousand-pounds': timesOver(1 / 2),
      'loose-for-rolled': timesOver(loose),
      'two-lanes': timesOver(1 / 2),
      'long-ton': timesOver(2240 / ton),
      'half-area': timesOver(2),
    },
  },
  {
    id: 'tons-left',
    topics: ['mix', 'trucks'],
    level: 'easy',
    finds: 'tons-left',
    draws: {
      'premix-mass': ['ton', steps(50, 120, 10)],
      'loads-placed': ['1', [2, 3, 4]],
      'truck-payload': ['ton', [10, 11, 12, 14]],
    },
    fair: (fact) => fact('premix-mass') - (fact('loads-placed') + 1) * fact('truck-payload') > 0,
    mistakes: {
      'done-for-left': ({ right, fact }) => fact('premix-mass') - right,
      'one-load-short': ({ right, fact }) => right + fact('truck-payload'),
      'one-load-over': ({ right, fact }) => right - fact('truck-payload'),
    },
  },
  {
    id: 'load-length',
    topics: ['trucks', 'blade'],
    level: 'medium',
    finds: 'load-length',
    draws: {
      'truck-payload': ['ton', [10, 11, 12, 14, 15]],
      'patch-width': width,
      'patch-depth': ['in', [1, 1.5, 2]],
      'unit-weight': ['lb/yd2/in', [110]],
    },
    mistakes: {
      'feet-not-yards': timesOver(1 / 9),
      'two-lanes': timesOver(1 / 2),
      'thousand-pounds': timesOver(1 / 2),
      'took-one-inch': ({ right, fact }) => right * fact('patch-depth'),
      'loose-for-rolled': timesOver(1 / loose),
      'half-for-one-and-half': ({ right, fact }) => (fact('patch-depth') === 1.5 ? right * 3 : Number.NaN),
    },
  },
  {
    id: 'loads',
    topics: ['trucks', 'mix'],
    level: 'easy',
    finds: 'truck-count',
    draws: { 'premix-mass': ['ton', steps(35, 130, 5)], 'truck-payload': ['ton', [10, 11, 12, 14, 15]] },
    mistakes: {
      'rounded-down': ({ fact }) => roundDown(fact('premix-mass') / fact('truck-payload')),
      'loose-for-rolled': ({ fact }) => roundUp((loose * fact('premix-mass')) / fact('truck-payload')),
      'two-lanes': ({ fact }) => roundUp((2 * fact('premix-mass')) / fact('truck-payload')),
      'half-loads': ({ fact }) => roundUp(fact('premix-mass') / (2 * fact('truck-payload'))),
    },
  },
  {
    id: 'legal-load',
    topics: ['trucks'],
    level: 'easy',
    finds: 'legal-payload',
    unit: 'ton',
    draws: { 'posted-weight': ['ton', [18, 20, 22, 23, 25]], 'truck-tare': ['ton', [10, 11, 12, 13]] },
    fair: (fact) => Math.abs(fact('posted-weight') - 2 * fact('truck-tare')) >= ton,
    mistakes: {
      'whole-truck-for-load': takes('posted-weight'),
      'empty-for-load': takes('truck-tare'),
      'half-of-posted': ({ fact }) => fact('posted-weight') / 2,
    },
  },
];
