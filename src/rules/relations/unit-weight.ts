import { constant, times } from '../../calc/expression.ts';
import maxSpecificGravity from '../quantities/max-specific-gravity.ts';
import unitWeight from '../quantities/unit-weight.ts';
import { relation } from '../shapes.ts';
import { floridaEstimates } from '../sources-craft.ts';

export default relation({
  id: 'unit-weight',
  title: 'compacted weight from the maximum specific gravity',
  finds: unitWeight,
  by: times(constant(43.3, 'lb/yd2/in'), maxSpecificGravity),
  because:
    'A square yard of water an inch deep weighs 46.8 lb; rolled mix comes to 92.5 % of what the lab weighs without air.',
  sources: [floridaEstimates('spread rate from the maximum specific gravity')],
  note: 'Rolled to 92.5 % of the maximum; the same source lets the spread rate be 5 % either way.',
  examples: [
    {
      given: { 'max-specific-gravity': [2.339, '1'] },
      finds: [101.28, 'lb/yd2/in'],
      within: 1e-4,
      source: 'Florida DOT final-estimates slides: Gmm 2.339 gives 101.28 (printed)',
    },
  ],
});
