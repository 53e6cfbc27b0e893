import { minus, over, times } from '../../calc/expression.ts';
import drumWidth from '../quantities/drum-width.ts';
import rollerCoverages from '../quantities/roller-coverages.ts';
import rollerEfficiency from '../quantities/roller-efficiency.ts';
import rollerOverlap from '../quantities/roller-overlap.ts';
import rollerSpeed from '../quantities/roller-speed.ts';
import rollingAreaRate from '../quantities/rolling-area-rate.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'rolling-area-rate',
  title: 'area rolled in an hour',
  finds: rollingAreaRate,
  by: over(times(minus(drumWidth, rollerOverlap), rollerSpeed, rollerEfficiency), rollerCoverages),
  bothWays: false,
  plan: true,
  because: 'Each trip rolls the drum less its overlap, and each spot is rolled several times.',
  sources: [geometry],
  examples: [
    {
      given: {
        'drum-width': [4.5, 'ft'],
        'roller-overlap': [6, 'in'],
        'roller-speed': [2.5, 'mph'],
        'roller-efficiency': [75, '%'],
        'roller-coverages': [4, '1'],
      },
      finds: [1100, 'yd2/h'],
      source: 'worked out by hand: 4 × 13,200 × 0.75 ÷ 4 is 9,900 ft2',
    },
  ],
});
