import { roundUp } from '../../calc/quantity.ts';
import { type Problem, takes, timesOver } from './problem.ts';

const foot = 12;
const mph = 17.6;
const us = { 'speed-unit': 'us' } as const;
const fast = ['mph', [45, 50, 55, 60, 65]] as const;
const slow = ['mph', [25, 30, 35, 40]] as const;
const width = ['ft', [10, 11, 12]] as const;

/** Tapers, spacing and queues. */
export const trafficProblems: readonly Problem[] = [
  {
    id: 'merging-taper-fast',
    topics: ['traffic'],
    level: 'medium',
    inFeetOnly: true,
    finds: 'merging-taper',
    draws: { 'posted-speed': fast, offset: width },
    settled: us,
    mistakes: {
      'low-speed-formula': ({ fact }) => (fact('offset') * (fact('posted-speed') / mph) ** 2) / 60,
      'flagger-for-merging': () => 100 * foot,
      'half-taper': timesOver(1 / 2),
      'third-taper': timesOver(1 / 3),
    },
  },
  {
    id: 'merging-taper-slow',
    topics: ['traffic'],
    level: 'hard',
    inFeetOnly: true,
    finds: 'merging-taper',
    draws: { 'posted-speed': slow, offset: width },
    settled: us,
    mistakes: {
      'high-speed-formula': ({ fact }) => (fact('offset') * fact('posted-speed')) / mph,
      'flagger-for-merging': () => 100 * foot,
      'half-taper': timesOver(1 / 2),
      'third-taper': timesOver(1 / 3),
    },
  },
  {
    id: 'shifting-taper',
    topics: ['traffic'],
    level: 'medium',
    finds: 'shifting-taper',
    draws: { 'merging-taper': ['ft', [320, 495, 540, 600, 660, 720]] },
    mistakes: {
      'whole-taper': takes('merging-taper'),
      'third-for-half': timesOver(2 / 3),
      'flagger-for-merging': () => 100 * foot,
    },
  },
  {
    id: 'shoulder-taper',
    topics: ['traffic'],
    level: 'medium',
    finds: 'shoulder-taper',
    draws: { 'merging-taper': ['ft', [480, 540, 600, 660, 720]] },
    mistakes: {
      'whole-taper': takes('merging-taper'),
      'half-for-third': timesOver(3 / 2),
      'flagger-for-merging': () => 100 * foot,
    },
  },
  {
    id: 'cone-spacing',
    topics: ['traffic'],
    level: 'easy',
    inFeetOnly: true,
    finds: 'device-spacing-tangent',
    draws: { 'posted-speed': ['mph', [25, 30, 35, 40, 45, 50, 55]] },
    mistakes: {
      'one-foot-a-mile': timesOver(1 / 2),
      'three-feet-a-mile': timesOver(3 / 2),
      'four-feet-a-mile': timesOver(2),
    },
  },
  {
    id: 'cones-on-taper',
    topics: ['traffic'],
    level: 'medium',
    finds: 'device-count',
    draws: { 'taper-length': ['ft', [180, 200, 240, 300, 320]], 'device-spacing': ['ft', [30, 40, 50]] },
    mistakes: {
      'end-forgotten': ({ right }) => right - 1,
      'both-sides': timesOver(2),
      'half-spacing': ({ fact }) => roundUp((2 * fact('taper-length')) / fact('device-spacing')) + 1,
      'both-ends-added': ({ right }) => right + 1,
    },
  },
  {
    id: 'queue',
    topics: ['traffic'],
    level: 'medium',
    finds: 'queue-length',
    draws: {
      'traffic-volume': ['1', [90, 120, 150, 180, 240]],
      'stop-time': ['min', [4, 5, 6, 8, 10]],
      'queue-room': ['ft', [25]],
    },
    mistakes: {
      'both-ways': timesOver(2),
      'decimal-hours': timesOver(60 / 100),
      'half-wait': timesOver(1 / 2),
    },
  },
  {
    id: 'warning-reach',
    topics: ['traffic'],
    level: 'easy',
    finds: 'advance-length',
    draws: {
      'sign-spacing-a': ['ft', [350, 500]],
      'sign-spacing-b': ['ft', [350, 500]],
      'sign-spacing-c': ['ft', [350, 500]],
    },
    fair: (fact) =>
      fact('sign-spacing-a') === fact('sign-spacing-b') && fact('sign-spacing-b') === fact('sign-spacing-c'),
    mistakes: {
      'nearest-sign-only': takes('sign-spacing-a'),
      'one-gap-forgotten': ({ right, fact }) => right - fact('sign-spacing-c'),
      'one-gap-more': ({ right, fact }) => right + fact('sign-spacing-c'),
    },
  },
];
