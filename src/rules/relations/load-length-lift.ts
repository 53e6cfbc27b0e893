import { over, times } from '../../calc/expression.ts';
import liftThickness from '../quantities/lift-thickness.ts';
import loadLength from '../quantities/load-length.ts';
import patchWidth from '../quantities/patch-width.ts';
import truckPayload from '../quantities/truck-payload.ts';
import unitWeight from '../quantities/unit-weight.ts';
import { relation } from '../shapes.ts';
import { virginia } from '../sources-craft.ts';

export default relation({
  id: 'load-length-lift',
  title: 'length a load covers in one lift',
  finds: loadLength,
  by: over(truckPayload, times(patchWidth, liftThickness, unitWeight)),
  bothWays: false,
  second: true,
  plan: true,
  said: [liftThickness],
  because: 'With no depth said, the lift is all there is.',
  sources: [virginia('ch. 9, p. 9-2')],
  note: 'For one lift of this thickness.',
  examples: [
    {
      given: {
        'truck-payload': [11, 'ton'],
        'patch-width': [9, 'ft'],
        'lift-thickness': [1, 'in'],
        'unit-weight': [110, 'lb/yd2/in'],
      },
      finds: [200, 'ft'],
      source: 'worked by hand: 22,000 lb ÷ 110 = 200 yd², × 9 ÷ 9 ft',
    },
  ],
});
