import { constant, minus, over, power, times } from '../../calc/expression.ts';
import patchShape from '../choices/patch-shape.ts';
import lastLiftMass from '../quantities/last-lift-mass.ts';
import liftCount from '../quantities/lift-count.ts';
import premixMass from '../quantities/premix-mass.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'last-lift-mass',
  title: 'last level lift in a dished patch',
  finds: lastLiftMass,
  by: times(premixMass, minus(1, power(minus(1, over(constant(1, '1'), liftCount)), 1.5))),
  bothWays: false,
  plan: true,
  when: [{ choice: patchShape, is: ['dished'] }],
  because: 'The whole parabola less what lies below the last lift.',
  sources: [geometry],
  examples: [
    {
      given: { 'premix-mass': [100, 'ton'], 'lift-count': [3, '1'], 'patch-shape': 'dished' },
      finds: [46, 'ton'],
      within: 0.02,
      source: 'parabola in three level lifts: 1 − (2/3)^1.5 = 0.456',
    },
  ],
});
