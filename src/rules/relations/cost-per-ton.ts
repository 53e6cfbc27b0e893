import { over } from '../../calc/expression.ts';
import costPerTon from '../quantities/cost-per-ton.ts';
import jobCost from '../quantities/job-cost.ts';
import premixMass from '../quantities/premix-mass.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'cost-per-ton',
  title: 'cost of a ton in place',
  finds: costPerTon,
  by: over(jobCost, premixMass),
  because: 'The whole cost over the tons laid.',
  sources: [geometry],
  examples: [
    {
      given: { 'job-cost': [988214, 'USD'], 'premix-mass': [3769, 'ton'] },
      finds: [262.2, 'USD/ton'],
      within: 1e-4,
      source: 'West Virginia Division of Highways, patching release of March 2021: 988,214 dollars, 3,769 tons',
    },
  ],
});
