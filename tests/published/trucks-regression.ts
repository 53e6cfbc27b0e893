import type { Regression } from './premix-regression.ts';

/** Worked out apart from this project, by the formula in `what`. */
export const trucksRegressions: readonly Regression[] = [
  {
    what: '75 tons an hour, round trip 66 min, 14 tons: 5.89',
    given: { 'laying-rate': [75, 'ton/h'], 'cycle-time': [66, 'min'], 'truck-payload': [14, 'ton'] },
    finds: 'trucks-needed',
    worked: [6, '1'],
    within: 0,
  },
  {
    what: 'trips of 66 min in 480',
    given: { 'cycle-time': [66, 'min'], 'work-hours': [8, 'h'] },
    finds: 'trips-per-truck',
    worked: [7, '1'],
    within: 0,
  },
  {
    what: '5 + 3 loading and ticket, 12 mi at 40, 10 dumping, 12 mi at 45, 5 waiting',
    given: {
      'load-time': [8, 'min'],
      'haul-distance': [12, 'mi'],
      'haul-speed': [40, 'mph'],
      'return-speed': [45, 'mph'],
      'unload-time': [10, 'min'],
      'wait-time': [5, 'min'],
    },
    finds: 'cycle-time',
    worked: [57, 'min'],
    within: 0.6,
  },
  {
    what: '15 tons at 80 tons an hour',
    given: { 'truck-payload': [15, 'ton'], 'laying-rate': [80, 'ton/h'] },
    finds: 'lay-time',
    worked: [11.25, 'min'],
    within: 1e-9,
  },
];
