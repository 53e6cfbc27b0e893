import { plus, times } from '../../calc/expression.ts';
import cycleTime from '../quantities/cycle-time.ts';
import haulTime from '../quantities/haul-time.ts';
import loadTime from '../quantities/load-time.ts';
import unloadTime from '../quantities/unload-time.ts';
import waitTime from '../quantities/wait-time.ts';
import { relation } from '../shapes.ts';
import { napa } from '../sources-craft.ts';

export default relation({
  id: 'cycle-time-by-haul',
  title: 'round trip from the time of the haul',
  finds: cycleTime,
  by: plus(loadTime, times(2, haulTime), waitTime, unloadTime),
  said: [haulTime],
  bothWays: false,
  because: 'Load, out, wait, dump and back.',
  sources: [napa('6.2')],
  note: 'The way back taken as long as the way out.',
  examples: [
    {
      given: {
        'load-time': [8, 'min'],
        'haul-time': [18, 'min'],
        'wait-time': [5, 'min'],
        'unload-time': [10, 'min'],
      },
      finds: [59, 'min'],
      source: 'worked out by hand: 8 + 18 + 5 + 10 + 18',
    },
  ],
});
