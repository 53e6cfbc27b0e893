import { roundUp } from '../../calc/quantity.ts';
import { type Problem, roundDown, steps, takes, timesOver } from './problem.ts';

const foot = 12;
const minute = 60;

/** Rolling, the edges and the finish. */
export const rollingProblems: readonly Problem[] = [
  {
    id: 'roller-lanes',
    topics: ['rolling'],
    level: 'medium',
    finds: 'roller-lanes',
    draws: {
      'patch-width': ['ft', steps(9, 24, 1)],
      'roller-overhang': ['in', [6]],
      'roller-overlap': ['in', [6]],
      'drum-width': ['ft', [3.5, 4, 4.5, 5, 5.5]],
    },
    mistakes: {
      'rounded-down': ({ right }) => right - 1,
      'overlap-both-sides': ({ fact }) =>
        roundUp(
          (fact('patch-width') + 2 * fact('roller-overhang')) / (fact('drum-width') - 2 * fact('roller-overlap')),
        ),
      'no-overlap': ({ fact }) => roundUp(fact('patch-width') / fact('drum-width')),
      'there-and-back': timesOver(2),
    },
  },
  {
    id: 'roller-trips',
    topics: ['rolling'],
    level: 'easy',
    finds: 'roller-passes',
    draws: { 'roller-lanes': ['1', [3, 4, 5]], 'roller-coverages': ['1', [2, 3, 4]] },
    fair: (fact) => fact('roller-lanes') !== fact('roller-coverages'),
    mistakes: {
      'pass-for-coverage': takes('roller-coverages'),
      'strips-only': takes('roller-lanes'),
      'added-not-times': ({ fact }) => fact('roller-lanes') + fact('roller-coverages'),
      'there-and-back': timesOver(2),
    },
  },
  {
    id: 'rolling-time',
    topics: ['rolling'],
    level: 'medium',
    finds: 'rolling-time',
    draws: {
      'roller-passes': ['1', [8, 10, 12, 15, 16]],
      'patch-length': ['ft', steps(150, 600, 50)],
      'roller-speed': ['mph', [2, 2.5, 3]],
      'roller-efficiency': ['%', [75]],
    },
    mistakes: {
      'no-lost-time': ({ right, fact }) => right * fact('roller-efficiency'),
      'there-and-back': timesOver(2),
      'one-pass-only': ({ right, fact }) => right / fact('roller-passes'),
      'mile-an-hour-as-60-feet': timesOver(88 / 60),
    },
  },
  {
    id: 'rolling-all-lifts',
    topics: ['rolling', 'lifts'],
    level: 'easy',
    finds: 'rolling-time-total',
    draws: { 'rolling-time': ['min', steps(12, 40, 2)], 'lift-count': ['1', [2, 3, 4]] },
    mistakes: {
      'one-lift-only': takes('rolling-time'),
      'one-lift-more': ({ fact }) => fact('rolling-time') * (fact('lift-count') + 1),
      'one-lift-fewer': ({ fact }) => fact('rolling-time') * (fact('lift-count') - 1),
      'there-and-back': timesOver(2),
    },
  },
  {
    id: 'roll-one-load',
    topics: ['rolling', 'trucks'],
    level: 'hard',
    finds: 'load-rolling-time',
    draws: {
      'roller-passes': ['1', [8, 10, 12, 15]],
      'load-length': ['ft', steps(100, 240, 20)],
      'roller-speed': ['mph', [2, 2.5, 3]],
      'roller-efficiency': ['%', [75]],
    },
    mistakes: {
      'no-lost-time': ({ right, fact }) => right * fact('roller-efficiency'),
      'there-and-back': timesOver(2),
      'one-pass-only': ({ right, fact }) => right / fact('roller-passes'),
      'mile-an-hour-as-60-feet': timesOver(88 / 60),
    },
  },
  {
    id: 'half-drum',
    topics: ['rolling'],
    level: 'easy',
    finds: 'half-drum',
    unit: 'in',
    draws: { 'drum-width': ['ft', [3, 4, 4.5, 5, 5.5, 6]] },
    mistakes: {
      'whole-for-half': takes('drum-width'),
      'feet-as-ten-inches': timesOver(10 / foot),
      'half-twice': timesOver(1 / 2),
    },
  },
  {
    id: 'crown-drop',
    topics: ['finish', 'blade'],
    level: 'medium',
    finds: 'crown-drop',
    draws: { 'cross-slope': ['%', [1.5, 2, 2.5, 3]], 'patch-width': ['ft', [10, 11, 12]] },
    mistakes: {
      'feet-as-ten-inches': timesOver(10 / foot),
      'half-width': timesOver(1 / 2),
      'both-lanes': timesOver(2),
      'tenth-for-percent': timesOver(10),
    },
  },
  {
    id: 'drop-after',
    topics: ['finish'],
    level: 'easy',
    finds: 'edge-drop-after',
    draws: { 'edge-drop': ['in', [1, 1.25, 1.5, 2]], 'edge-thickness': ['in', [0.5, 0.75, 1]] },
    mistakes: {
      'patch-forgotten': takes('edge-drop'),
      'taken-off': ({ fact }) => fact('edge-drop') - fact('edge-thickness'),
      'patch-twice': ({ fact }) => fact('edge-drop') + 2 * fact('edge-thickness'),
    },
  },
  {
    id: 'truck-headway',
    topics: ['trucks'],
    level: 'easy',
    finds: 'truck-spacing',
    draws: { 'cycle-time': ['min', [48, 60, 72, 84, 96]], 'trucks-on-job': ['1', [3, 4, 6]] },
    mistakes: {
      'one-truck-fewer': ({ fact }) => fact('cycle-time') / (fact('trucks-on-job') - 1),
      'one-truck-more': ({ fact }) => fact('cycle-time') / (fact('trucks-on-job') + 1),
      'one-way-only': timesOver(1 / 2),
      'one-truck-only': takes('cycle-time'),
    },
  },
  {
    id: 'round-trip',
    topics: ['trucks'],
    level: 'medium',
    finds: 'cycle-time',
    draws: {
      'load-time': ['min', [6, 8, 10]],
      'haul-distance': ['mi', [8, 10, 12, 16]],
      'haul-speed': ['mph', [30, 40]],
      'wait-time': ['min', [5, 8, 10]],
      'unload-time': ['min', [8, 10, 12]],
      'return-speed': ['mph', [40, 48]],
    },
    mistakes: {
      'one-way-only': ({ right, fact }) => right - fact('haul-distance') / fact('return-speed'),
      'drive-only': ({ fact }) =>
        fact('haul-distance') / fact('haul-speed') + fact('haul-distance') / fact('return-speed'),
      'mile-a-minute': ({ fact }) =>
        fact('load-time') +
        fact('wait-time') +
        fact('unload-time') +
        (2 * fact('haul-distance') * minute) / (5280 * foot),
    },
  },
  {
    id: 'trucks-to-keep-up',
    topics: ['trucks'],
    level: 'medium',
    finds: 'trucks-needed',
    draws: { 'cycle-time': ['min', steps(50, 110, 5)], 'lay-time': ['min', [12, 15, 18, 20]] },
    mistakes: {
      'rounded-down': ({ fact }) => roundDown(fact('cycle-time') / fact('lay-time')),
      'one-way-only': ({ fact }) => roundUp(fact('cycle-time') / 2 / fact('lay-time')),
      'there-and-back': ({ fact }) => roundUp((2 * fact('cycle-time')) / fact('lay-time')),
    },
  },
  {
    id: 'load-lasts',
    topics: ['trucks', 'blade'],
    level: 'medium',
    finds: 'lay-time',
    draws: { 'truck-payload': ['ton', [10, 12, 14, 15]], 'laying-rate': ['ton/h', [40, 50, 60, 80]] },
    mistakes: {
      'decimal-hours': timesOver(100 / 60),
      'two-loads': timesOver(2),
      'half-loads': timesOver(1 / 2),
    },
  },
];
