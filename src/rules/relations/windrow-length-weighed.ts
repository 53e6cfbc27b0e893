import { over, times } from '../../calc/expression.ts';
import rowLoose from '../quantities/row-loose.ts';
import truckPayload from '../quantities/truck-payload.ts';
import windrowLength from '../quantities/windrow-length.ts';
import windrowSection from '../quantities/windrow-section.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'windrow-length-weighed',
  title: 'row one load makes, from its end area',
  finds: windrowLength,
  by: over(truckPayload, times(windrowSection, rowLoose)),
  bothWays: false,
  plan: true,
  said: [rowLoose, windrowSection],
  because: 'The load has so much room, and each foot of row takes some of it.',
  sources: [geometry],
  examples: [
    {
      given: { 'truck-payload': [14, 'ton'], 'windrow-section': [1.6, 'ft2'], 'row-loose': [100, 'lb/ft3'] },
      finds: [175, 'ft'],
      source: 'worked out by hand: 28,000 ÷ 160',
    },
  ],
});
