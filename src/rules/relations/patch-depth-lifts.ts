import { times } from '../../calc/expression.ts';
import liftCount from '../quantities/lift-count.ts';
import liftThickness from '../quantities/lift-thickness.ts';
import patchDepth from '../quantities/patch-depth.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'patch-depth-lifts',
  title: 'depth of lifts that were said',
  finds: patchDepth,
  by: times(liftCount, liftThickness),
  bothWays: false,
  said: [liftCount, liftThickness],
  because: 'Lifts lie one on the other.',
  sources: [geometry],
  note: 'Depth taken as so many lifts of that thickness all over the patch.',
  examples: [
    {
      given: { 'lift-count': [2, '1'], 'lift-thickness': [1, 'in'] },
      finds: [2, 'in'],
      source: 'worked by hand: 2 × 1',
    },
  ],
});
