import { over } from '../../calc/expression.ts';
import deepestDepth from '../quantities/deepest-depth.ts';
import liftCount from '../quantities/lift-count.ts';
import liftThickness from '../quantities/lift-thickness.ts';
import { commonPractice, relation } from '../shapes.ts';

export default relation({
  id: 'lift-thickness',
  title: 'equal lifts over the deepest spot',
  finds: liftThickness,
  by: over(deepestDepth, liftCount),
  bothWays: false,
  because: 'Equal lifts share the depth evenly.',
  sources: [commonPractice],
  note: 'Equal lifts suit a hole cut square. Level lifts in a dished one take 35 and 65 % of the tons from the bottom up, or 19, 35 and 46 % of three.',
  examples: [
    {
      given: { 'deepest-depth': [2.5, 'in'], 'lift-count': [3, '1'] },
      finds: [5 / 6, 'in'],
      source: 'worked by hand: 2.5 ÷ 3',
    },
  ],
});
