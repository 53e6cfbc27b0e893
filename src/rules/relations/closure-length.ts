import { plus } from '../../calc/expression.ts';
import advanceLength from '../quantities/advance-length.ts';
import bufferLength from '../quantities/buffer-length.ts';
import closureLength from '../quantities/closure-length.ts';
import downstreamTaper from '../quantities/downstream-taper.ts';
import mergingTaper from '../quantities/merging-taper.ts';
import patchLength from '../quantities/patch-length.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'closure-length',
  title: 'signs, taper, buffer, work and taper',
  finds: closureLength,
  by: plus(advanceLength, mergingTaper, bufferLength, patchLength, downstreamTaper),
  bothWays: false,
  because: 'The parts follow one another in the direction of traffic.',
  sources: [geometry],
  examples: [
    {
      given: {
        'advance-length': [1500, 'ft'],
        'merging-taper': [660, 'ft'],
        'buffer-length': [495, 'ft'],
        'patch-length': [1000, 'ft'],
        'downstream-taper': [100, 'ft'],
      },
      finds: [3755, 'ft'],
      source: 'rural multilane road at 55 mph, 1,000 ft of work: 1,500 + 660 + 495 + 1,000 + 100',
    },
  ],
});
