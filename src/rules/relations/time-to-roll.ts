import { model, times } from '../../calc/expression.ts';
import baseTemperature from '../quantities/base-temperature.ts';
import coolingAir from '../quantities/cooling-air.ts';
import coolingAllowance from '../quantities/cooling-allowance.ts';
import liftThickness from '../quantities/lift-thickness.ts';
import mixTemperature from '../quantities/mix-temperature.ts';
import rollingStopTemperature from '../quantities/rolling-stop-temperature.ts';
import timeToRoll from '../quantities/time-to-roll.ts';
import windSpeed from '../quantities/wind-speed.ts';
import { relation } from '../shapes.ts';
import { fromMemory } from '../sources-craft.ts';

export default relation({
  id: 'time-to-roll',
  title: 'cooling of a hot lift',
  finds: timeToRoll,
  by: times(
    coolingAllowance,
    model(
      'cooling-time',
      // W/(m K), J/(kg K), kg/m3; film of the wind in W/(m2 K) for wind in m/s; no sun.
      {
        conductivity: 1.21,
        heatCapacity: 921,
        density: 2243,
        stillFilm: 7.4,
        windFilm: 6.39,
        windPower: 0.75,
        emissivity: 0.95,
      },
      liftThickness,
      mixTemperature,
      baseTemperature,
      coolingAir,
      windSpeed,
      rollingStopTemperature,
    ),
  ),
  bothWays: false,
  because:
    'Heat flows down into the road and up into the wind; the mean of the lift is followed until it is too stiff to pack.',
  sources: [
    { document: 'one-dimensional heat flow by finite volumes, worked out here', seen: 'derived' },
    fromMemory('properties of the mix as in MN/RC-1998-18 and the compaction-cessation work of the 1970s'),
  ],
  examples: [
    {
      given: {
        'lift-thickness': [1, 'in'],
        'mix-temperature': [300, 'degF'],
        'base-temperature': [60, 'degF'],
        'cooling-air': [60, 'degF'],
        'wind-speed': [10, 'mph'],
        'rolling-stop-temperature': [175, 'degF'],
        'cooling-allowance': [1, '1'],
      },
      finds: [7.48, 'min'],
      within: 0.01,
      source: 'an independent explicit solution with 20, 40 and 80 cells: 7.48, 7.48 and 7.47 min',
    },
  ],
});
