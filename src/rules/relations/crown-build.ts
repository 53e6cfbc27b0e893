import { minus, times } from '../../calc/expression.ts';
import crossSlope from '../quantities/cross-slope.ts';
import crownBuild from '../quantities/crown-build.ts';
import oldCrossSlope from '../quantities/old-cross-slope.ts';
import patchWidth from '../quantities/patch-width.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'crown-build',
  title: 'build-up to restore the slope',
  finds: crownBuild,
  by: times(minus(crossSlope, oldCrossSlope), patchWidth),
  keeps: [patchWidth],
  because: 'The fall that is wanted less the fall that is there.',
  sources: [geometry],
  examples: [
    {
      given: { 'cross-slope': [2, '%'], 'old-cross-slope': [1.2, '%'], 'patch-width': [11, 'ft'] },
      finds: [1.056, 'in'],
      source: 'worked out by hand: 0.008 × 132 in',
    },
  ],
});
