import { constant, over, power, times } from '../../calc/expression.ts';
import patchShape from '../choices/patch-shape.ts';
import firstLiftMass from '../quantities/first-lift-mass.ts';
import liftCount from '../quantities/lift-count.ts';
import premixMass from '../quantities/premix-mass.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'first-lift-mass',
  title: 'first level lift in a dished patch',
  finds: firstLiftMass,
  by: times(premixMass, power(over(constant(1, '1'), liftCount), 1.5)),
  bothWays: false,
  plan: true,
  when: [{ choice: patchShape, is: ['dished'] }],
  because:
    'The width of a parabola grows with the root of the height, so what lies below a height grows with its power of one and a half.',
  sources: [geometry],
  examples: [
    {
      given: { 'premix-mass': [100, 'ton'], 'lift-count': [2, '1'], 'patch-shape': 'dished' },
      finds: [35, 'ton'],
      within: 0.02,
      source: 'parabola in two level lifts: (1/2)^1.5 = 0.354',
    },
    {
      given: { 'premix-mass': [100, 'ton'], 'lift-count': [4, '1'], 'patch-shape': 'dished' },
      finds: [12.5, 'ton'],
      source: 'parabola in four level lifts: (1/4)^1.5 = 1/8',
    },
  ],
});
