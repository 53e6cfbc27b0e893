import { over, times } from '../../calc/expression.ts';
import loadLength from '../quantities/load-length.ts';
import patchWidth from '../quantities/patch-width.ts';
import spreadRate from '../quantities/spread-rate.ts';
import truckPayload from '../quantities/truck-payload.ts';
import { relation } from '../shapes.ts';
import { virginia } from '../sources-craft.ts';

export default relation({
  id: 'load-length-spread',
  title: 'length a load covers at a spread rate',
  finds: loadLength,
  by: over(truckPayload, times(patchWidth, spreadRate)),
  keeps: [truckPayload],
  because: 'So many pounds lie in each foot of the lane.',
  sources: [virginia('ch. 9, p. 9-2')],
  examples: [
    {
      given: { 'truck-payload': [15, 'ton'], 'patch-width': [12, 'ft'], 'spread-rate': [110, 'lb/yd2'] },
      finds: [204.5455, 'ft'],
      within: 1e-6,
      source: 'worked by hand: 30,000 lb ÷ (12 ÷ 9 × 110) lb a foot',
    },
    {
      given: { 'truck-payload': [132940, 'lb'], 'patch-width': [26, 'ft'], 'spread-rate': [170, 'lb/yd2'] },
      finds: [270.69, 'ft'],
      within: 1e-4,
      source: 'Virginia DOT study guide, ch. 9, p. 9-2: 132,940 lb, 26 ft, 170 lb/yd² gives 270.69 ft (printed)',
    },
  ],
});
