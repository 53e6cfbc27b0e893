import { over } from '../../calc/expression.ts';
import liftCount from '../quantities/lift-count.ts';
import liftThickness from '../quantities/lift-thickness.ts';
import patchDepth from '../quantities/patch-depth.ts';
import { commonPractice, relation } from '../shapes.ts';

export default relation({
  id: 'lift-thickness-average',
  title: 'equal lifts over the average depth',
  finds: liftThickness,
  by: over(patchDepth, liftCount),
  bothWays: false,
  second: true,
  because: 'Equal lifts share the depth evenly; over a deeper spot they come thicker.',
  sources: [commonPractice],
  note: 'From the average depth, in equal lifts: right for a hole cut square. Level lifts in a dished one take 35 and 65 % of the tons from the bottom up, or 19, 35 and 46 % of three.',
  examples: [
    {
      given: { 'patch-depth': [2.25, 'in'], 'lift-count': [3, '1'] },
      finds: [0.75, 'in'],
      source: 'worked by hand: 2.25 ÷ 3',
    },
  ],
});
