import { over, roundUp } from '../../calc/expression.ts';
import liftCount from '../quantities/lift-count.ts';
import liftThickness from '../quantities/lift-thickness.ts';
import patchDepth from '../quantities/patch-depth.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'lift-count-by-thickness-average',
  title: 'lifts of a thickness that was said, by the average depth',
  finds: liftCount,
  by: roundUp(over(patchDepth, liftThickness)),
  said: [liftThickness],
  second: true,
  plan: true,
  because: 'Lifts of that thickness, and what is left over takes one more.',
  sources: [geometry],
  note: 'Lifts figured from the average depth; the deepest spot decides them: give it if it is deeper.',
  examples: [
    {
      given: { 'patch-depth': [2, 'in'], 'lift-thickness': [0.75, 'in'] },
      finds: [3, '1'],
      source: 'worked by hand: 2 ÷ 3/4 is 2.67, rounded up',
    },
  ],
});
