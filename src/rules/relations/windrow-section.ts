import { times } from '../../calc/expression.ts';
import liftLoose from '../quantities/lift-loose.ts';
import patchWidth from '../quantities/patch-width.ts';
import windrowSection from '../quantities/windrow-section.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'windrow-section',
  title: 'end area of the row, one lift',
  finds: windrowSection,
  by: times(patchWidth, liftLoose),
  bothWays: false,
  second: true,
  plan: true,
  because: 'Spread over the width it must leave the loose lift.',
  sources: [geometry],
  note: 'For one lift, taken as loose as the laid mat.',
  examples: [
    {
      given: { 'patch-width': [10, 'ft'], 'lift-loose': [1.25, 'in'] },
      finds: [12.5 / 12, 'ft2'],
      source: 'geometry: 10 ft by 1.25 in',
    },
  ],
});
