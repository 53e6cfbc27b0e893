import { times } from '../../calc/expression.ts';
import liftThickness from '../quantities/lift-thickness.ts';
import spreadRate from '../quantities/spread-rate.ts';
import unitWeight from '../quantities/unit-weight.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'spread-rate-lift',
  title: 'spread rate of one lift',
  finds: spreadRate,
  by: times(unitWeight, liftThickness),
  bothWays: false,
  second: true,
  plan: true,
  said: [liftThickness],
  because: 'With no depth said, the lift is all there is.',
  sources: [geometry],
  note: 'For one lift of this thickness.',
  examples: [
    {
      given: { 'unit-weight': [110, 'lb/yd2/in'], 'lift-thickness': [0.75, 'in'] },
      finds: [82.5, 'lb/yd2'],
      source: 'worked by hand: 110 × 3/4',
    },
  ],
});
