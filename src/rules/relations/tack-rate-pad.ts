import { over, times } from '../../calc/expression.ts';
import padArea from '../quantities/pad-area.ts';
import padMass from '../quantities/pad-mass.ts';
import tackRate from '../quantities/tack-rate.ts';
import tackWeight from '../quantities/tack-weight.ts';
import { relation } from '../shapes.ts';
import { navyBasic } from '../sources-craft.ts';

export default relation({
  id: 'tack-rate-pad',
  title: 'rate from a test pad',
  finds: tackRate,
  by: over(padMass, times(padArea, tackWeight)),
  plan: true,
  because: 'What the pad gained, over its size and the weight of a gallon.',
  sources: [navyBasic('p. 489 of the web edition: pads after ASTM D2995')],
  examples: [
    {
      given: { 'pad-mass': [0.32, 'kg'], 'pad-area': [1, 'yd2'], 'tack-weight': [8.4, 'lb/gal'] },
      finds: [0.084, 'gal/yd2'],
      within: 0.001,
      source: 'worked out by hand: 0.32 kg is 0.7055 lb; ÷ 8.4',
    },
  ],
});
