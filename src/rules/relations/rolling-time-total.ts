import { times } from '../../calc/expression.ts';
import liftCount from '../quantities/lift-count.ts';
import rollingTime from '../quantities/rolling-time.ts';
import rollingTimeTotal from '../quantities/rolling-time-total.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'rolling-time-total',
  title: 'time to roll all lifts',
  finds: rollingTimeTotal,
  by: times(rollingTime, liftCount),
  keeps: [liftCount],
  because: 'Every lift is rolled alike.',
  sources: [geometry],
  examples: [
    {
      given: { 'rolling-time': [21, 'min'], 'lift-count': [2, '1'] },
      finds: [42, 'min'],
      source: 'twice the one lift',
    },
  ],
});
