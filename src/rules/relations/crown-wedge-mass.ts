import { times } from '../../calc/expression.ts';
import crownWedgeDepth from '../quantities/crown-wedge-depth.ts';
import crownWedgeMass from '../quantities/crown-wedge-mass.ts';
import patchArea from '../quantities/patch-area.ts';
import unitWeight from '../quantities/unit-weight.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'crown-wedge-mass',
  title: 'mix in the crown wedge',
  finds: crownWedgeMass,
  by: times(patchArea, crownWedgeDepth, unitWeight),
  bothWays: false,
  because: 'Area times average depth times what the mix weighs.',
  sources: [geometry],
  examples: [
    {
      given: { 'patch-area': [1100, 'ft2'], 'crown-wedge-depth': [0.528, 'in'], 'unit-weight': [145, 'lb/ft3'] },
      finds: [3.509, 'ton'],
      within: 1e-4,
      source: 'worked out by hand: 1,100 × 0.044 × 145 ÷ 2,000',
    },
  ],
});
