import { plus } from '../../calc/expression.ts';
import bufferLength from '../quantities/buffer-length.ts';
import downstreamTaper from '../quantities/downstream-taper.ts';
import flaggerTaper from '../quantities/flagger-taper.ts';
import oneLaneLength from '../quantities/one-lane-length.ts';
import patchLength from '../quantities/patch-length.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'one-lane-length',
  title: 'taper, buffer, patch and taper',
  finds: oneLaneLength,
  by: plus(flaggerTaper, bufferLength, patchLength, downstreamTaper),
  bothWays: false,
  because: 'The parts follow one another from one flagger to the other.',
  sources: [geometry],
  examples: [
    {
      given: {
        'flagger-taper': [100, 'ft'],
        'buffer-length': [360, 'ft'],
        'patch-length': [400, 'ft'],
        'downstream-taper': [100, 'ft'],
      },
      finds: [960, 'ft'],
      source: 'parts of the two-lane layout with flaggers: 100 + 360 + 400 + 100',
    },
  ],
});
