import { over } from '../../calc/expression.ts';
import cycleTime from '../quantities/cycle-time.ts';
import truckSpacing from '../quantities/truck-spacing.ts';
import trucksOnJob from '../quantities/trucks-on-job.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'truck-spacing',
  title: 'a truck comes every',
  finds: truckSpacing,
  by: over(cycleTime, trucksOnJob),
  keeps: [trucksOnJob],
  because: 'The trucks share out the round trip.',
  sources: [geometry],
  examples: [
    {
      given: { 'cycle-time': [60, 'min'], 'trucks-on-job': [4, '1'] },
      finds: [15, 'min'],
      source: 'worked out by hand',
    },
  ],
});
