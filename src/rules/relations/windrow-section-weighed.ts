import { constant, over, times } from '../../calc/expression.ts';
import rowLoose from '../quantities/row-loose.ts';
import windrowMassPer100ft from '../quantities/windrow-mass-per-100ft.ts';
import windrowSection from '../quantities/windrow-section.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'windrow-section-weighed',
  title: 'end area from a weighed row',
  finds: windrowSection,
  by: over(windrowMassPer100ft, times(rowLoose, constant(100, 'ft'))),
  bothWays: false,
  plan: true,
  said: [rowLoose],
  because: 'The weight of a foot of row, over what loose mix weighs.',
  sources: [geometry],
  examples: [
    {
      given: { 'windrow-mass-per-100ft': [7.35, 'ton'], 'row-loose': [105, 'lb/ft3'] },
      finds: [1.4, 'ft2'],
      source: 'worked out by hand: 147 lb a foot ÷ 105',
    },
  ],
});
