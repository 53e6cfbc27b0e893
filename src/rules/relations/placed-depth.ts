import { over, times } from '../../calc/expression.ts';
import patchArea from '../quantities/patch-area.ts';
import placedDepth from '../quantities/placed-depth.ts';
import placedMass from '../quantities/placed-mass.ts';
import unitWeight from '../quantities/unit-weight.ts';
import { relation } from '../shapes.ts';
import { virginia } from '../sources-craft.ts';

export default relation({
  id: 'placed-depth',
  title: 'yield over the patch',
  finds: placedDepth,
  by: over(placedMass, times(patchArea, unitWeight)),
  bothWays: false,
  plan: true,
  because: 'Weight down over area, over what an inch of it weighs.',
  sources: [virginia('ch. 9, p. 9-2')],
  examples: [
    {
      given: { 'placed-mass': [22, 'ton'], 'patch-area': [200, 'yd2'], 'unit-weight': [110, 'lb/yd2/in'] },
      finds: [2, 'in'],
      source: 'worked by hand: 44,000 lb ÷ 200 yd² is 220 lb/yd², two inches of 110',
    },
  ],
});
