import { times } from '../../calc/expression.ts';
import endTaperLength from '../quantities/end-taper-length.ts';
import endTaperMass from '../quantities/end-taper-mass.ts';
import patchDepth from '../quantities/patch-depth.ts';
import patchWidth from '../quantities/patch-width.ts';
import unitWeight from '../quantities/unit-weight.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'end-taper-mass',
  title: 'mix in one end taper',
  finds: endTaperMass,
  by: times(0.5, patchDepth, endTaperLength, patchWidth, unitWeight),
  bothWays: false,
  because: 'A wedge is half of the full box.',
  sources: [geometry],
  examples: [
    {
      given: {
        'patch-depth': [1.5, 'in'],
        'end-taper-length': [20, 'ft'],
        'patch-width': [12, 'ft'],
        'unit-weight': [110, 'lb/yd2/in'],
      },
      finds: [1.1, 'ton'],
      source: 'worked out by hand: 15 ft3 at 146.67 lb',
    },
  ],
});
