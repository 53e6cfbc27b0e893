import { plus, times } from '../../calc/expression.ts';
import advanceLength from '../quantities/advance-length.ts';
import oneLaneLength from '../quantities/one-lane-length.ts';
import zoneLength from '../quantities/zone-length.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'zone-length',
  title: 'signs both ways and what lies between',
  finds: zoneLength,
  by: plus(times(2, advanceLength), oneLaneLength),
  bothWays: false,
  because: 'Traffic is warned from both directions, so the sign distances count twice.',
  sources: [geometry],
  examples: [
    {
      given: { 'advance-length': [1500, 'ft'], 'one-lane-length': [960, 'ft'] },
      finds: [3960, 'ft'],
      source: 'rural two-lane road at 45 mph, 400 ft patch: 2 × 1,500 + 960',
    },
  ],
});
