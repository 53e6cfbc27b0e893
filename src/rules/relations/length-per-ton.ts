import { constant, over, times } from '../../calc/expression.ts';
import lengthPerTon from '../quantities/length-per-ton.ts';
import patchWidth from '../quantities/patch-width.ts';
import spreadRate from '../quantities/spread-rate.ts';
import { relation } from '../shapes.ts';
import { virginia } from '../sources-craft.ts';

export default relation({
  id: 'length-per-ton',
  title: 'length a short ton covers',
  finds: lengthPerTon,
  by: over(constant(1, 'ton'), times(patchWidth, spreadRate)),
  because: 'A ton over the pounds in each foot of the lane: 18,000 over width in feet and pounds a square yard.',
  sources: [virginia('ch. 9, p. 9-2')],
  examples: [
    {
      given: { 'patch-width': [26, 'ft'], 'spread-rate': [170, 'lb/yd2'] },
      finds: [4.07, 'ft'],
      within: 1e-3,
      source: 'Virginia DOT study guide, ch. 9, p. 9-2: 18,000 ÷ 4,420 = 4.07 ft a ton (printed)',
    },
  ],
});
