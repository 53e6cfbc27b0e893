import { over, plus } from '../../calc/expression.ts';
import cycleTime from '../quantities/cycle-time.ts';
import haulDistance from '../quantities/haul-distance.ts';
import haulSpeed from '../quantities/haul-speed.ts';
import loadTime from '../quantities/load-time.ts';
import returnSpeed from '../quantities/return-speed.ts';
import unloadTime from '../quantities/unload-time.ts';
import waitTime from '../quantities/wait-time.ts';
import { relation } from '../shapes.ts';
import { napa } from '../sources-craft.ts';

export default relation({
  id: 'cycle-time',
  title: 'round trip of a truck',
  finds: cycleTime,
  by: plus(loadTime, over(haulDistance, haulSpeed), waitTime, unloadTime, over(haulDistance, returnSpeed)),
  keeps: [haulDistance],
  because: 'Load, out, wait, dump and back.',
  sources: [napa('6.2')],
  examples: [
    {
      given: {
        'load-time': [8, 'min'],
        'haul-distance': [12, 'mi'],
        'haul-speed': [40, 'mph'],
        'wait-time': [5, 'min'],
        'unload-time': [10, 'min'],
        'return-speed': [45, 'mph'],
      },
      finds: [57, 'min'],
      source: 'worked out by hand: 8 + 18 + 5 + 10 + 16',
    },
  ],
});
