import { over, roundUp } from '../../calc/expression.ts';
import liftCount from '../quantities/lift-count.ts';
import liftMax from '../quantities/lift-max.ts';
import patchDepth from '../quantities/patch-depth.ts';
import { commonPractice, relation } from '../shapes.ts';

export default relation({
  id: 'lift-count-average',
  title: 'lifts for the average depth',
  finds: liftCount,
  by: roundUp(over(patchDepth, liftMax)),
  second: true,
  plan: true,
  because: 'In a hole cut square the average is the deepest spot.',
  sources: [commonPractice],
  note: 'Lifts figured from the average depth; the deepest spot decides them: give it if it is deeper.',
  examples: [
    {
      given: { 'patch-depth': [2.25, 'in'], 'lift-max': [1, 'in'] },
      finds: [3, '1'],
      source: 'worked by hand: 2.25 ÷ 1, rounded up',
    },
    {
      given: { 'patch-depth': [76, 'mm'], 'lift-max': [1, 'in'] },
      finds: [3, '1'],
      source: 'worked by hand: 76 mm is under 3 × 25.4 mm',
    },
  ],
});
