import { times } from '../../calc/expression.ts';
import liftThickness from '../quantities/lift-thickness.ts';
import rollingAreaRate from '../quantities/rolling-area-rate.ts';
import rollingRate from '../quantities/rolling-rate.ts';
import unitWeight from '../quantities/unit-weight.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'rolling-rate',
  title: 'tons the roller keeps up with',
  finds: rollingRate,
  by: times(rollingAreaRate, liftThickness, unitWeight),
  bothWays: false,
  because: 'Area in an hour, at the thickness and weight of the lift.',
  sources: [geometry],
  examples: [
    {
      given: { 'rolling-area-rate': [1100, 'yd2/h'], 'lift-thickness': [1, 'in'], 'unit-weight': [110, 'lb/yd2/in'] },
      finds: [60.5, 'ton/h'],
      source: 'worked out by hand: 1,100 × 110 ÷ 2,000',
    },
  ],
});
