import { over, plus, roundUp } from '../../calc/expression.ts';
import layoutKind from '../choices/layout-kind.ts';
import bufferLength from '../quantities/buffer-length.ts';
import deviceSpacingTangent from '../quantities/device-spacing-tangent.ts';
import downstreamTaper from '../quantities/downstream-taper.ts';
import longTaperSpacing from '../quantities/long-taper-spacing.ts';
import mergingTaper from '../quantities/merging-taper.ts';
import patchLength from '../quantities/patch-length.ts';
import shortTaperSpacing from '../quantities/short-taper-spacing.ts';
import zoneDevices from '../quantities/zone-devices.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'zone-devices-lane-closed',
  title: 'along the tapers, the buffer and the work',
  finds: zoneDevices,
  by: plus(
    roundUp(over(mergingTaper, longTaperSpacing)),
    roundUp(over(plus(bufferLength, patchLength), deviceSpacingTangent)),
    roundUp(over(downstreamTaper, shortTaperSpacing)),
    1,
  ),
  bothWays: false,
  when: [{ choice: layoutKind, is: ['lane-closed'] }],
  because: 'No space wider than recommended on each run, and one device more than the spaces.',
  sources: [geometry],
  examples: [
    {
      given: {
        'merging-taper': [660, 'ft'],
        'long-taper-spacing': [55, 'ft'],
        'buffer-length': [495, 'ft'],
        'patch-length': [1000, 'ft'],
        'device-spacing-tangent': [110, 'ft'],
        'downstream-taper': [100, 'ft'],
        'short-taper-spacing': [20, 'ft'],
        'layout-kind': 'lane-closed',
      },
      finds: [32, '1'],
      source: '660 ft at 55 ft, 1,495 ft at 110 ft, 100 ft at 20 ft: 12 + 14 + 5 spaces and one device more',
    },
  ],
});
