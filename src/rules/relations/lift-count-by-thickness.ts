import { over, roundUp } from '../../calc/expression.ts';
import deepestDepth from '../quantities/deepest-depth.ts';
import liftCount from '../quantities/lift-count.ts';
import liftThickness from '../quantities/lift-thickness.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'lift-count-by-thickness',
  title: 'lifts of a thickness that was said',
  finds: liftCount,
  by: roundUp(over(deepestDepth, liftThickness)),
  said: [liftThickness],
  plan: true,
  because: 'Lifts of that thickness, and what is left over takes one more.',
  sources: [geometry],
  examples: [
    {
      given: { 'deepest-depth': [2, 'in'], 'lift-thickness': [0.75, 'in'] },
      finds: [3, '1'],
      source: 'worked by hand: 2 ÷ 3/4 is 2.67, rounded up',
    },
  ],
});
