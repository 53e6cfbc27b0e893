import { over } from '../../calc/expression.ts';
import loadRollingTime from '../quantities/load-rolling-time.ts';
import rollerLimitedRate from '../quantities/roller-limited-rate.ts';
import truckPayload from '../quantities/truck-payload.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'roller-limited-rate',
  title: 'pace one roller allows',
  finds: rollerLimitedRate,
  by: over(truckPayload, loadRollingTime),
  bothWays: false,
  because: 'One load for each time it is rolled.',
  sources: [geometry],
  examples: [
    {
      given: { 'truck-payload': [15, 'ton'], 'load-rolling-time': [18, 'min'] },
      finds: [50, 'ton/h'],
      source: 'worked out by hand',
    },
  ],
});
