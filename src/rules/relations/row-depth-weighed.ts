import { over, times } from '../../calc/expression.ts';
import patchWidth from '../quantities/patch-width.ts';
import rowDepth from '../quantities/row-depth.ts';
import rowLoose from '../quantities/row-loose.ts';
import unitWeight from '../quantities/unit-weight.ts';
import windrowSection from '../quantities/windrow-section.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'row-depth-weighed',
  title: 'depth a weighed row lays',
  finds: rowDepth,
  by: over(times(windrowSection, rowLoose), times(patchWidth, unitWeight)),
  bothWays: false,
  plan: true,
  said: [rowLoose],
  because: 'The weight of a foot of row, over what the width takes for each inch.',
  sources: [geometry],
  examples: [
    {
      given: {
        'windrow-section': [1.5, 'ft2'],
        'row-loose': [110, 'lb/ft3'],
        'patch-width': [12, 'ft'],
        'unit-weight': [110, 'lb/yd2/in'],
      },
      finds: [1.125, 'in'],
      source: 'worked out by hand: 165 lb a foot ÷ (12 ÷ 9 × 110)',
    },
  ],
});
