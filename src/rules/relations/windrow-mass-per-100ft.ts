import { constant, times } from '../../calc/expression.ts';
import liftThickness from '../quantities/lift-thickness.ts';
import patchWidth from '../quantities/patch-width.ts';
import unitWeight from '../quantities/unit-weight.ts';
import windrowMassPer100ft from '../quantities/windrow-mass-per-100ft.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'windrow-mass-per-100ft',
  title: 'mix in 100 ft of row, one lift',
  finds: windrowMassPer100ft,
  by: times(patchWidth, liftThickness, unitWeight, constant(100, 'ft')),
  bothWays: false,
  because: 'The row holds what the lift will hold.',
  sources: [geometry],
  examples: [
    {
      given: { 'patch-width': [12, 'ft'], 'lift-thickness': [1, 'in'], 'unit-weight': [110, 'lb/yd2/in'] },
      finds: [22 / 3, 'ton'],
      source: 'worked out by hand: 12 × 100 ÷ 9 × 110 ÷ 2,000',
    },
  ],
});
