import { over, times } from '../../calc/expression.ts';
import patchWidth from '../quantities/patch-width.ts';
import placedDepth from '../quantities/placed-depth.ts';
import placedLength from '../quantities/placed-length.ts';
import placedMass from '../quantities/placed-mass.ts';
import unitWeight from '../quantities/unit-weight.ts';
import { relation } from '../shapes.ts';
import { virginia } from '../sources-craft.ts';

export default relation({
  id: 'placed-depth-length',
  title: 'yield over the length laid so far',
  finds: placedDepth,
  by: over(placedMass, times(placedLength, patchWidth, unitWeight)),
  bothWays: false,
  because: 'Weight down over what has been covered with it, over what an inch of it weighs.',
  sources: [virginia('ch. 9, p. 9-2')],
  note: 'Over the length laid so far.',
  examples: [
    {
      given: {
        'placed-mass': [11, 'ton'],
        'placed-length': [100, 'ft'],
        'patch-width': [9, 'ft'],
        'unit-weight': [110, 'lb/yd2/in'],
      },
      finds: [2, 'in'],
      source: 'worked by hand: 22,000 lb ÷ 100 yd² is 220 lb/yd², two inches of 110',
    },
  ],
});
