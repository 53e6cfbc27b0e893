import { over } from '../../calc/expression.ts';
import liftCount from '../quantities/lift-count.ts';
import liftMass from '../quantities/lift-mass.ts';
import premixMass from '../quantities/premix-mass.ts';
import { commonPractice, relation } from '../shapes.ts';

export default relation({
  id: 'lift-mass',
  title: 'tons a lift',
  finds: liftMass,
  by: over(premixMass, liftCount),
  bothWays: false,
  plan: true,
  because: 'Equal lifts over the same area take the same tons.',
  sources: [commonPractice],
  note: 'Equal tons a lift suit a hole cut square; in a dished one the first level lift takes the least and the last the most.',
  examples: [
    {
      given: { 'premix-mass': [44, 'ton'], 'lift-count': [2, '1'] },
      finds: [22, 'ton'],
      source: 'worked by hand: 44 ÷ 2',
    },
  ],
});
