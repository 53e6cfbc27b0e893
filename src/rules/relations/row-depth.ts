import { over, times } from '../../calc/expression.ts';
import patchWidth from '../quantities/patch-width.ts';
import rollDown from '../quantities/roll-down.ts';
import rowDepth from '../quantities/row-depth.ts';
import windrowSection from '../quantities/windrow-section.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'row-depth',
  title: 'depth the row lays',
  finds: rowDepth,
  by: over(windrowSection, times(patchWidth, rollDown)),
  bothWays: false,
  second: true,
  plan: true,
  because: 'Spread over the width it is the loose lift, and that less the roll-down is the rolled one.',
  sources: [geometry],
  examples: [
    {
      given: { 'windrow-section': [1.2, 'ft2'], 'patch-width': [10, 'ft'], 'roll-down': [1.25, '1'] },
      finds: [1.152, 'in'],
      source: 'worked out by hand: 1.2 ÷ 10 ft is 1.44 in; ÷ 1.25',
    },
  ],
});
