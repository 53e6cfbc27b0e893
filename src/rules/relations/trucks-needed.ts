import { over, roundUp } from '../../calc/expression.ts';
import cycleTime from '../quantities/cycle-time.ts';
import layTime from '../quantities/lay-time.ts';
import trucksNeeded from '../quantities/trucks-needed.ts';
import { relation } from '../shapes.ts';
import { napa } from '../sources-craft.ts';

export default relation({
  id: 'trucks-needed',
  title: 'trucks to keep the blade going',
  finds: trucksNeeded,
  by: roundUp(over(cycleTime, layTime)),
  bothWays: false,
  because: 'While one is gone the others must bring what is laid.',
  sources: [napa('6.2: 13.1 trucks are 14')],
  examples: [
    {
      given: { 'cycle-time': [131, 'min'], 'lay-time': [10, 'min'] },
      finds: [14, '1'],
      source: 'NAPA handbook 6.2: 13.1 means 14',
    },
  ],
});
