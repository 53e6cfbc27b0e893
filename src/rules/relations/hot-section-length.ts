import { over, times } from '../../calc/expression.ts';
import hotSectionLength from '../quantities/hot-section-length.ts';
import rollerEfficiency from '../quantities/roller-efficiency.ts';
import rollerPasses from '../quantities/roller-passes.ts';
import rollerSpeed from '../quantities/roller-speed.ts';
import timeToRoll from '../quantities/time-to-roll.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'hot-section-length',
  title: 'how far a hot lift may run ahead',
  finds: hotSectionLength,
  by: over(times(timeToRoll, rollerSpeed, rollerEfficiency), rollerPasses),
  bothWays: false,
  because: 'In the time there is, every trip must be made over it.',
  sources: [geometry],
  examples: [
    {
      given: {
        'time-to-roll': [8, 'min'],
        'roller-speed': [220, 'ft/min'],
        'roller-efficiency': [75, '%'],
        'roller-passes': [12, '1'],
      },
      finds: [110, 'ft'],
      source: 'worked out by hand: 8 × 165 ÷ 12',
    },
  ],
});
