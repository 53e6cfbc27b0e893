import { over, plus, roundUp } from '../../calc/expression.ts';
import layoutKind from '../choices/layout-kind.ts';
import bufferLength from '../quantities/buffer-length.ts';
import deviceSpacingTangent from '../quantities/device-spacing-tangent.ts';
import downstreamTaper from '../quantities/downstream-taper.ts';
import flaggerTaper from '../quantities/flagger-taper.ts';
import patchLength from '../quantities/patch-length.ts';
import shortTaperSpacing from '../quantities/short-taper-spacing.ts';
import zoneDevices from '../quantities/zone-devices.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'zone-devices-flaggers',
  title: 'along the tapers, the buffer and the work',
  finds: zoneDevices,
  by: plus(
    roundUp(over(flaggerTaper, shortTaperSpacing)),
    roundUp(over(plus(bufferLength, patchLength), deviceSpacingTangent)),
    roundUp(over(downstreamTaper, shortTaperSpacing)),
    1,
  ),
  bothWays: false,
  when: [{ choice: layoutKind, is: ['flaggers'] }],
  because: 'No space wider than recommended on each run, and one device more than the spaces.',
  sources: [geometry],
  examples: [
    {
      given: {
        'flagger-taper': [100, 'ft'],
        'short-taper-spacing': [20, 'ft'],
        'buffer-length': [360, 'ft'],
        'patch-length': [400, 'ft'],
        'device-spacing-tangent': [90, 'ft'],
        'downstream-taper': [100, 'ft'],
        'layout-kind': 'flaggers',
      },
      finds: [20, '1'],
      source: '100 ft at 20 ft, 760 ft at 90 ft, 100 ft at 20 ft: 5 + 9 + 5 spaces and one device more',
    },
  ],
});
