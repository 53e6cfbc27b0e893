import { over, times } from '../../calc/expression.ts';
import patchWidth from '../quantities/patch-width.ts';
import placedLength from '../quantities/placed-length.ts';
import placedMass from '../quantities/placed-mass.ts';
import placedRate from '../quantities/placed-rate.ts';
import { relation } from '../shapes.ts';
import { virginia } from '../sources-craft.ts';

export default relation({
  id: 'placed-rate-length',
  title: 'pounds a square yard over the length laid so far',
  finds: placedRate,
  by: over(placedMass, times(placedLength, patchWidth)),
  bothWays: false,
  because: 'Weight down over what has been covered with it.',
  sources: [virginia('ch. 9, p. 9-2')],
  note: 'Over the length laid so far.',
  examples: [
    {
      given: { 'placed-mass': [11, 'ton'], 'placed-length': [100, 'ft'], 'patch-width': [9, 'ft'] },
      finds: [220, 'lb/yd2'],
      source: 'worked by hand: 22,000 ÷ 100 yd²',
    },
  ],
});
