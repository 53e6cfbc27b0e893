import type { Regression } from './premix-regression.ts';

const lane = (width: number, drum: number) =>
  ({
    'patch-width': [width, 'ft'],
    'drum-width': [drum, 'ft'],
    'roller-overlap': [6, 'in'],
    'roller-overhang': [6, 'in'],
  }) as const;
const slow = { 'roller-speed': [2.5, 'mph'] } as const;
const worked = { ...slow, 'roller-efficiency': [75, '%'] } as const;
const trips = { 'roller-lanes': [3, '1'], 'roller-coverages': [4, '1'], 'patch-length': [300, 'ft'] } as const;
const pace = {
  ...worked,
  'drum-width': [4.5, 'ft'],
  'roller-overlap': [6, 'in'],
  'roller-coverages': [4, '1'],
} as const;
const inch = { 'lift-thickness': [1, 'in'], 'unit-weight': [145, 'lb/ft3'] } as const;
const load = {
  ...worked,
  'roller-lanes': [3, '1'],
  'roller-coverages': [4, '1'],
  'load-length': [248.3, 'ft'],
  'truck-payload': [15, 'ton'],
} as const;

/** Worked out apart from this project, by the formula in `what`. */
export const rollerRegressions: readonly Regression[] = [
  { what: '11 ft lane, 4.5 ft drum', given: lane(11, 4.5), finds: 'roller-lanes', worked: [3, '1'], within: 0 },
  { what: '11 ft lane, 3 ft drum', given: lane(11, 3), finds: 'roller-lanes', worked: [5, '1'], within: 0 },
  {
    what: '12 trips of 300 ft at 220 ft/min, without a stop',
    given: { ...trips, ...slow, 'roller-efficiency': [100, '%'] },
    finds: 'rolling-time',
    worked: [16.364, 'min'],
    within: 0.001,
  },
  {
    what: 'the same at 75 %',
    given: { ...trips, ...worked },
    finds: 'rolling-time',
    worked: [21.818, 'min'],
    within: 0.001,
  },
  {
    what: '4 ft × 13,200 ft/h × 0.75 ÷ 4, in yd²',
    given: pace,
    finds: 'rolling-area-rate',
    worked: [1100, 'yd2/h'],
    within: 0.002,
  },
  {
    what: 'the same in tons, 1 in at 145 lb/ft³',
    given: { ...pace, ...inch },
    finds: 'rolling-rate',
    worked: [59.81, 'ton/h'],
    within: 0.01,
  },
  {
    what: 'rollers for 80 tons an hour at that pace',
    given: { ...pace, ...inch, 'laying-rate': [80, 'ton/h'] },
    finds: 'rollers-needed',
    worked: [2, '1'],
    within: 0,
  },
  {
    what: '2,400 blows a minute at 2.5 mph',
    given: { 'drum-vibration': [2400, '1'], 'roller-speed': [2.5, 'mph'] },
    finds: 'impacts-per-foot',
    worked: [10.91, '1'],
    within: 0.01,
  },
  {
    what: '3,600 blows a minute at 4 mph',
    given: { 'drum-vibration': [3600, '1'], 'roller-speed': [4, 'mph'] },
    finds: 'impacts-per-foot',
    worked: [10.23, '1'],
    within: 0.01,
  },
  {
    what: '2,400 blows a minute at 3 mph',
    given: { 'drum-vibration': [2400, '1'], 'roller-speed': [3, 'mph'] },
    finds: 'impacts-per-foot',
    worked: [9.09, '1'],
    within: 0.01,
  },
  {
    what: '12 trips of the 248.3 ft of one load',
    given: load,
    finds: 'load-rolling-time',
    worked: [18.056, 'min'],
    within: 0.01,
  },
  {
    what: 'tons an hour one roller allows then',
    given: load,
    finds: 'roller-limited-rate',
    worked: [49.84, 'ton/h'],
    within: 0.02,
  },
];
