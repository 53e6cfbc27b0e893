import { over, roundUp } from '../../calc/expression.ts';
import liftMax from '../quantities/lift-max.ts';
import liftSplit from '../quantities/lift-split.ts';
import liftThickness from '../quantities/lift-thickness.ts';
import { commonPractice, relation } from '../shapes.ts';

export default relation({
  id: 'lift-split',
  title: 'one thick lift laid in several',
  finds: liftSplit,
  by: roundUp(over(liftThickness, liftMax)),
  plan: true,
  because: 'Each is only as thick as the thickest that packs.',
  sources: [commonPractice],
  examples: [
    { given: { 'lift-thickness': [2, 'in'], 'lift-max': [1, 'in'] }, finds: [2, '1'], source: 'worked by hand: 2 ÷ 1' },
  ],
});
