import { over, times } from '../../calc/expression.ts';
import patchLength from '../quantities/patch-length.ts';
import rollerEfficiency from '../quantities/roller-efficiency.ts';
import rollerPasses from '../quantities/roller-passes.ts';
import rollerSpeed from '../quantities/roller-speed.ts';
import rollingTime from '../quantities/rolling-time.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'rolling-time',
  title: 'time to roll one lift',
  finds: rollingTime,
  by: over(times(rollerPasses, patchLength), times(rollerSpeed, rollerEfficiency)),
  keeps: [rollerPasses],
  plan: true,
  because: 'Each trip is the length of the patch; part of the hour is not rolling.',
  sources: [geometry],
  examples: [
    {
      given: {
        'roller-passes': [12, '1'],
        'patch-length': [300, 'ft'],
        'roller-speed': [2.5, 'mph'],
        'roller-efficiency': [75, '%'],
      },
      finds: [3600 / 165, 'min'],
      source: 'worked out by hand: 3,600 ft ÷ (220 × 0.75)',
    },
  ],
});
