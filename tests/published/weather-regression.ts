import type { Regression } from './premix-regression.ts';

/** A lift in inches at a temperature, on a road as warm as the air, in a wind. */
const lift = (inches: number, mix: number, road: number, wind: number) =>
  ({
    'lift-thickness': [inches, 'in'],
    'mix-temperature': [mix, 'degF'],
    'base-temperature': [road, 'degF'],
    'air-temperature': [road, 'degF'],
    'wind-speed': [wind, 'mph'],
  }) as const;
const fivePercent = (minutes: number) => ({ worked: [minutes, 'min'], within: 0.05 * minutes }) as const;

/** From an independent explicit solution of the same equation, with 20, 40 and 80 cells in the lift, printed to 0.1 min. */
export const weatherRegressions: readonly Regression[] = [
  { what: '1 in at 300, road 60, wind 10', given: lift(1, 300, 60, 10), finds: 'time-to-roll', ...fivePercent(7.5) },
  { what: '1 in at 250, road 40, wind 10', given: lift(1, 250, 40, 10), finds: 'time-to-roll', ...fivePercent(3.6) },
  { what: '1 in at 275, road 60, wind 10', given: lift(1, 275, 60, 10), finds: 'time-to-roll', ...fivePercent(5.9) },
  {
    what: '3/4 in at 300, road 60, wind 10',
    given: lift(0.75, 300, 60, 10),
    finds: 'time-to-roll',
    ...fivePercent(4.8),
  },
  {
    what: '1 1/2 in at 300, road 60, wind 10',
    given: lift(1.5, 300, 60, 10),
    finds: 'time-to-roll',
    ...fivePercent(13.8),
  },
  { what: '2 in at 300, road 60, wind 10', given: lift(2, 300, 60, 10), finds: 'time-to-roll', ...fivePercent(21.3) },
  { what: '1 in at 300, road 80, wind 5', given: lift(1, 300, 80, 5), finds: 'time-to-roll', ...fivePercent(10.2) },
  { what: '1 in at 300, road 60, calm', given: lift(1, 300, 60, 0), finds: 'time-to-roll', ...fivePercent(10.7) },
  { what: '1 in at 300, road 60, wind 20', given: lift(1, 300, 60, 20), finds: 'time-to-roll', ...fivePercent(6.4) },
  {
    what: '1/2 in at 300, road 80, wind 10',
    given: lift(0.5, 300, 80, 10),
    finds: 'time-to-roll',
    ...fivePercent(3.1),
  },
  { what: '2 in at 250, road 40, wind 10', given: lift(2, 250, 40, 10), finds: 'time-to-roll', ...fivePercent(10.8) },
  {
    what: 'how far it may run: 7.5 min × 220 ft/min × 0.75 ÷ 12 trips',
    given: {
      ...lift(1, 300, 60, 10),
      'roller-speed': [220, 'ft/min'],
      'roller-efficiency': [75, '%'],
      'roller-passes': [12, '1'],
    },
    finds: 'hot-section-length',
    worked: [103, 'ft'],
    within: 5,
  },
];
