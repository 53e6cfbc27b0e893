import { over, times } from '../../calc/expression.ts';
import loadLength from '../quantities/load-length.ts';
import loadRollingTime from '../quantities/load-rolling-time.ts';
import rollerEfficiency from '../quantities/roller-efficiency.ts';
import rollerPasses from '../quantities/roller-passes.ts';
import rollerSpeed from '../quantities/roller-speed.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'load-rolling-time',
  title: 'time to roll what one load covers',
  finds: loadRollingTime,
  by: over(times(rollerPasses, loadLength), times(rollerSpeed, rollerEfficiency)),
  bothWays: false,
  because: 'Each trip is the length one load covers.',
  sources: [geometry],
  examples: [
    {
      given: {
        'roller-passes': [12, '1'],
        'load-length': [220, 'ft'],
        'roller-speed': [2.5, 'mph'],
        'roller-efficiency': [75, '%'],
      },
      finds: [16, 'min'],
      source: 'worked out by hand: 12 × 220 ÷ 165',
    },
  ],
});
