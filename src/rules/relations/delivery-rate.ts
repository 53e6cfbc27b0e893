import { over } from '../../calc/expression.ts';
import deliveryRate from '../quantities/delivery-rate.ts';
import truckPayload from '../quantities/truck-payload.ts';
import truckSpacing from '../quantities/truck-spacing.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'delivery-rate',
  title: 'mix the trucks bring',
  finds: deliveryRate,
  by: over(truckPayload, truckSpacing),
  bothWays: false,
  because: 'A load each time one comes.',
  sources: [geometry],
  examples: [
    {
      given: { 'truck-payload': [15, 'ton'], 'truck-spacing': [15, 'min'] },
      finds: [60, 'ton/h'],
      source: 'worked out by hand',
    },
  ],
});
