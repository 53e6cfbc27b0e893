import { over } from '../../calc/expression.ts';
import costPerTon from '../quantities/cost-per-ton.ts';
import jobCost from '../quantities/job-cost.ts';
import placedMass from '../quantities/placed-mass.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'cost-per-ton-placed',
  title: 'cost of a ton laid',
  finds: costPerTon,
  by: over(jobCost, placedMass),
  bothWays: false,
  second: true,
  plan: true,
  because: 'The whole cost over the tons that were laid.',
  sources: [geometry],
  examples: [
    {
      given: { 'job-cost': [13496, 'USD'], 'placed-mass': [80, 'ton'] },
      finds: [168.7, 'USD/ton'],
      source: 'worked out by hand: 13,496 ÷ 80',
    },
  ],
});
