import { constant, over, times } from '../../calc/expression.ts';
import truckPayload from '../quantities/truck-payload.ts';
import windrowLength from '../quantities/windrow-length.ts';
import windrowMassPer100ft from '../quantities/windrow-mass-per-100ft.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'windrow-length',
  title: 'row one load makes',
  finds: windrowLength,
  by: over(times(truckPayload, constant(100, 'ft')), windrowMassPer100ft),
  bothWays: false,
  because: 'A load runs out where its tons are in the row.',
  sources: [geometry],
  examples: [
    {
      given: { 'truck-payload': [11, 'ton'], 'windrow-mass-per-100ft': [22 / 3, 'ton'] },
      finds: [150, 'ft'],
      source: 'worked out by hand: 11 ÷ 7.333 × 100',
    },
  ],
});
