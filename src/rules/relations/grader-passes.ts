import { plus } from '../../calc/expression.ts';
import graderPasses from '../quantities/grader-passes.ts';
import leastPasses from '../quantities/least-passes.ts';
import { commonPractice, relation } from '../shapes.ts';

export default relation({
  id: 'grader-passes',
  title: 'no more passes than the width needs',
  finds: graderPasses,
  by: plus(leastPasses),
  bothWays: false,
  second: true,
  plan: true,
  because: 'Where nobody says how many are made, the fewest are taken.',
  sources: [commonPractice],
  note: 'Laying strips only; building and sizing the row comes on top.',
  examples: [{ given: { 'least-passes': [6, '1'] }, finds: [6, '1'], source: 'common practice' }],
});
