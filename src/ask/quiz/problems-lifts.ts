import { roundUp } from '../../calc/quantity.ts';
import { loose, type Problem, roundDown, steps, takes, timesOver } from './problem.ts';

/** Lifts, the row and the blade. */
export const liftProblems: readonly Problem[] = [
  {
    id: 'lift-count',
    topics: ['lifts', 'blade'],
    level: 'easy',
    finds: 'lift-count',
    draws: {
      'deepest-depth': ['in', [1.5, 2.25, 2.5, 2.75, 3.25, 3.5]],
      'patch-depth': ['in', [1, 1.5, 2]],
      'lift-max': ['in', [1]],
    },
    fair: (fact) => fact('deepest-depth') > fact('patch-depth'),
    mistakes: {
      'rounded-down': ({ fact }) => roundDown(fact('deepest-depth') / fact('lift-max')),
      'average-for-deepest': ({ fact }) => roundUp(fact('patch-depth') / fact('lift-max')),
      'half-lifts': ({ fact }) => roundUp((2 * fact('deepest-depth')) / fact('lift-max')),
      'depths-added': ({ fact }) => roundUp((fact('deepest-depth') + fact('patch-depth')) / fact('lift-max')),
    },
  },
  {
    id: 'loose-depth',
    topics: ['lifts', 'blade', 'rolling'],
    level: 'easy',
    finds: 'lift-loose',
    draws: { 'lift-thickness': ['in', [0.5, 0.75, 1]], 'roll-down': ['1', [1.25, 1.3, 1.4]] },
    mistakes: {
      'rolled-for-loose': takes('lift-thickness'),
      'divided-not-times': ({ right, fact }) => right / fact('roll-down') ** 2,
      'roll-down-twice': ({ right, fact }) => right * fact('roll-down'),
      'roll-down-as-inches': ({ fact }) => fact('lift-thickness') + fact('roll-down'),
    },
  },
  {
    id: 'thinnest-lift',
    topics: ['lifts', 'mix'],
    level: 'easy',
    finds: 'lift-min',
    draws: { 'stone-size': ['in', [0.25, 0.375, 0.5]] },
    mistakes: {
      'one-stone-deep': takes('stone-size'),
      'twice-the-stone': ({ fact }) => 2 * fact('stone-size'),
      'three-times-the-stone': ({ fact }) => 3 * fact('stone-size'),
    },
  },
  {
    id: 'tons-a-lift',
    topics: ['lifts', 'mix', 'blade'],
    level: 'easy',
    finds: 'lift-mass',
    draws: { 'premix-mass': ['ton', steps(24, 120, 12)], 'lift-count': ['1', [2, 3, 4]] },
    settled: { 'patch-shape': 'square-cut' },
    mistakes: {
      'for-all-lifts': takes('premix-mass'),
      'loose-for-rolled': timesOver(loose),
      'one-lift-more': ({ fact }) => fact('premix-mass') / (fact('lift-count') + 1),
      'one-lift-fewer': ({ fact }) => fact('premix-mass') / (fact('lift-count') - 1),
    },
  },
  {
    id: 'row-section',
    topics: ['blade'],
    level: 'medium',
    finds: 'windrow-section',
    draws: {
      'patch-width': ['ft', [9, 10, 11, 12]],
      'lift-thickness': ['in', [0.75, 1]],
      'roll-down': ['1', [1.25, 1.3, 1.4]],
    },
    mistakes: {
      'rolled-for-loose': ({ right, fact }) => right / fact('roll-down'),
      'inches-as-tenths': timesOver(1.2),
      'two-lanes': timesOver(2),
      'divided-not-times': ({ right, fact }) => right / fact('roll-down') ** 2,
    },
  },
  {
    id: 'row-tons',
    topics: ['blade', 'mix'],
    level: 'hard',
    inFeetOnly: true,
    finds: 'windrow-mass-per-100ft',
    draws: {
      'patch-width': ['ft', [9, 10, 11, 12]],
      'lift-thickness': ['in', [0.75, 1]],
      'unit-weight': ['lb/yd2/in', [105, 110, 115]],
    },
    mistakes: {
      'linear-yards': timesOver(3),
      'feet-not-yards': timesOver(9),
      'loose-for-rolled': timesOver(loose),
      'thousand-pounds': timesOver(2),
      'two-lanes': timesOver(2),
    },
  },
  {
    id: 'strips',
    topics: ['blade'],
    level: 'medium',
    finds: 'blade-passes',
    draws: {
      'patch-width': ['ft', steps(18, 36, 1)],
      'blade-overlap': ['ft', [1]],
      'blade-reach': ['ft', [8.5, 9, 9.5, 10, 10.5]],
    },
    mistakes: {
      'rounded-down': ({ right }) => right - 1,
      'overlap-both-sides': ({ fact }) =>
        roundUp(fact('patch-width') / (fact('blade-reach') - 2 * fact('blade-overlap'))),
      'there-and-back': timesOver(2),
      'no-overlap': ({ fact }) => roundUp(fact('patch-width') / fact('blade-reach')),
    },
  },
  {
    id: 'passes-for-all-lifts',
    topics: ['blade', 'lifts'],
    level: 'easy',
    finds: 'least-passes',
    draws: { 'blade-passes': ['1', [2, 3, 4]], 'lift-count': ['1', [2, 3, 4]] },
    mistakes: {
      'one-lift-only': takes('blade-passes'),
      'added-not-times': ({ fact }) => fact('blade-passes') + fact('lift-count'),
      'there-and-back': timesOver(2),
    },
  },
  {
    id: 'blade-time',
    topics: ['blade'],
    level: 'hard',
    finds: 'grading-time',
    unit: 'min',
    draws: {
      'grader-passes': ['1', [4, 6, 8]],
      'work-distance': ['ft', steps(600, 1500, 100)],
      'grader-speed': ['mph', [2, 2.5, 3]],
      'grader-efficiency': ['%', [60, 75]],
    },
    mistakes: {
      'no-lost-time': ({ right, fact }) => right * fact('grader-efficiency'),
      'decimal-hours': timesOver(100 / 60),
      'there-and-back': timesOver(2),
      'one-pass-only': ({ right, fact }) => right / fact('grader-passes'),
    },
  },
];
