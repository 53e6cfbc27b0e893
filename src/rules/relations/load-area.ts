import { over, times } from '../../calc/expression.ts';
import loadArea from '../quantities/load-area.ts';
import patchDepth from '../quantities/patch-depth.ts';
import truckPayload from '../quantities/truck-payload.ts';
import unitWeight from '../quantities/unit-weight.ts';
import { relation } from '../shapes.ts';
import { virginia } from '../sources-craft.ts';

export default relation({
  id: 'load-area',
  title: 'area a load covers',
  finds: loadArea,
  by: over(truckPayload, times(patchDepth, unitWeight)),
  keeps: [truckPayload],
  because: 'So many pounds lie on each square yard.',
  sources: [virginia('ch. 9, p. 9-1')],
  examples: [
    {
      given: { 'truck-payload': [11, 'ton'], 'patch-depth': [2, 'in'], 'unit-weight': [110, 'lb/yd2/in'] },
      finds: [100, 'yd2'],
      source: 'worked by hand: 22,000 lb ÷ 220 lb/yd²',
    },
  ],
});
