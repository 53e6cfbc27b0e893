import { over } from '../../calc/expression.ts';
import layTime from '../quantities/lay-time.ts';
import layingRate from '../quantities/laying-rate.ts';
import truckPayload from '../quantities/truck-payload.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'lay-time',
  title: 'time one load lasts',
  finds: layTime,
  by: over(truckPayload, layingRate),
  because: 'Tons of a load over tons an hour.',
  sources: [geometry],
  examples: [
    {
      given: { 'truck-payload': [15, 'ton'], 'laying-rate': [80, 'ton/h'] },
      finds: [11.25, 'min'],
      source: 'worked out by hand',
    },
  ],
});
