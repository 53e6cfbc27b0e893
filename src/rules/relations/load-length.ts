import { over, times } from '../../calc/expression.ts';
import loadLength from '../quantities/load-length.ts';
import patchDepth from '../quantities/patch-depth.ts';
import patchWidth from '../quantities/patch-width.ts';
import truckPayload from '../quantities/truck-payload.ts';
import unitWeight from '../quantities/unit-weight.ts';
import { relation } from '../shapes.ts';
import { virginia } from '../sources-craft.ts';

export default relation({
  id: 'load-length',
  title: 'length a load covers',
  finds: loadLength,
  by: over(truckPayload, times(patchWidth, patchDepth, unitWeight)),
  keeps: [truckPayload],
  because: 'So many pounds lie in each foot of the lane.',
  sources: [virginia('ch. 9, p. 9-2')],
  examples: [
    {
      given: {
        'truck-payload': [14, 'ton'],
        'patch-width': [12, 'ft'],
        'patch-depth': [1, 'in'],
        'unit-weight': [110, 'lb/yd2/in'],
      },
      finds: [2100 / 11, 'ft'],
      source: 'worked by hand: 28,000 lb ÷ 110 = 254.5 yd², × 9 ÷ 12 ft',
    },
  ],
});
