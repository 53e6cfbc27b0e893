import { over, plus, roundUp } from '../../calc/expression.ts';
import layoutKind from '../choices/layout-kind.ts';
import bufferLength from '../quantities/buffer-length.ts';
import deviceSpacingTangent from '../quantities/device-spacing-tangent.ts';
import longTaperSpacing from '../quantities/long-taper-spacing.ts';
import patchLength from '../quantities/patch-length.ts';
import shoulderTaper from '../quantities/shoulder-taper.ts';
import zoneDevices from '../quantities/zone-devices.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'zone-devices-shoulder',
  title: 'along the taper, the buffer and the work',
  finds: zoneDevices,
  by: plus(
    roundUp(over(shoulderTaper, longTaperSpacing)),
    roundUp(over(plus(bufferLength, patchLength), deviceSpacingTangent)),
    1,
  ),
  bothWays: false,
  when: [{ choice: layoutKind, is: ['shoulder'] }],
  because: 'No space wider than recommended on each run, and one device more than the spaces.',
  sources: [geometry],
  examples: [
    {
      given: {
        'shoulder-taper': [220, 'ft'],
        'long-taper-spacing': [55, 'ft'],
        'buffer-length': [495, 'ft'],
        'patch-length': [300, 'ft'],
        'device-spacing-tangent': [110, 'ft'],
        'layout-kind': 'shoulder',
      },
      finds: [13, '1'],
      source: '220 ft at 55 ft, 795 ft at 110 ft: 4 + 8 spaces and one device more',
    },
  ],
});
