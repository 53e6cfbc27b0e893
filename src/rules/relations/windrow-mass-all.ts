import { constant, times } from '../../calc/expression.ts';
import patchDepth from '../quantities/patch-depth.ts';
import patchWidth from '../quantities/patch-width.ts';
import unitWeight from '../quantities/unit-weight.ts';
import windrowMassPer100ft from '../quantities/windrow-mass-per-100ft.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'windrow-mass-all',
  title: 'mix in 100 ft of row, all lifts',
  finds: windrowMassPer100ft,
  by: times(patchWidth, patchDepth, unitWeight, constant(100, 'ft')),
  bothWays: false,
  second: true,
  plan: true,
  because: 'One row for the whole depth, where no lift is named.',
  sources: [geometry],
  note: 'One row for all lifts.',
  examples: [
    {
      given: { 'patch-width': [12, 'ft'], 'patch-depth': [2, 'in'], 'unit-weight': [110, 'lb/yd2/in'] },
      finds: [44 / 3, 'ton'],
      source: 'worked out by hand: twice the row of one inch',
    },
  ],
});
