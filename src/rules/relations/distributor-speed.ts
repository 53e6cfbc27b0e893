import { over, times } from '../../calc/expression.ts';
import distributorSpeed from '../quantities/distributor-speed.ts';
import pumpRate from '../quantities/pump-rate.ts';
import sprayWidth from '../quantities/spray-width.ts';
import tackRate from '../quantities/tack-rate.ts';
import { relation } from '../shapes.ts';
import { virginia } from '../sources-craft.ts';

export default relation({
  id: 'distributor-speed',
  title: 'speed of the distributor',
  finds: distributorSpeed,
  by: over(pumpRate, times(tackRate, sprayWidth)),
  because: 'What the pump gives in a minute covers so many feet.',
  sources: [virginia('ch. 8, HMA-8: v = 9 Q ÷ (W R)')],
  examples: [
    {
      given: { 'pump-rate': [40, 'gal/min'], 'tack-rate': [0.06, 'gal/yd2'], 'spray-width': [12, 'ft'] },
      finds: [500, 'ft/min'],
      source: 'worked out by hand from v = 9 Q ÷ (W R): 360 ÷ 0.72',
    },
  ],
});
