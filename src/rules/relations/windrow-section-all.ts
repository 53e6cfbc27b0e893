import { times } from '../../calc/expression.ts';
import patchLoose from '../quantities/patch-loose.ts';
import patchWidth from '../quantities/patch-width.ts';
import windrowSectionAll from '../quantities/windrow-section-all.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'windrow-section-all',
  title: 'end area of one row for all lifts',
  finds: windrowSectionAll,
  by: times(patchWidth, patchLoose),
  bothWays: false,
  plan: true,
  because: 'Spread over the width it must leave the whole depth, loose.',
  sources: [geometry],
  examples: [
    {
      given: { 'patch-width': [12, 'ft'], 'patch-loose': [2.5, 'in'] },
      finds: [2.5, 'ft2'],
      source: 'geometry: 12 ft by 2.5 in',
    },
  ],
});
