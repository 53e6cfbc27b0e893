import { over } from '../../calc/expression.ts';
import tackArea from '../quantities/tack-area.ts';
import tackRate from '../quantities/tack-rate.ts';
import tackUsed from '../quantities/tack-used.ts';
import { relation } from '../shapes.ts';
import { virginia } from '../sources-craft.ts';

export default relation({
  id: 'tack-rate-used',
  title: 'rate from the tack used',
  finds: tackRate,
  by: over(tackUsed, tackArea),
  plan: true,
  because: 'Gallons that left the tank, over the square yards they went on.',
  sources: [virginia('ch. 8, HMA-8, problems 1 to 3')],
  examples: [
    {
      given: { 'tack-used': [610, 'gal'], 'tack-area': [5250 * 11, 'ft2'] },
      finds: [0.095, 'gal/yd2'],
      within: 0.006,
      source: 'Virginia DOT, HMA-8 problem 1: 610 gal on 5,250 × 11 ft',
    },
  ],
});
