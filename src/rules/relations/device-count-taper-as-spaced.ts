import { over, plus, roundUp } from '../../calc/expression.ts';
import deviceCount from '../quantities/device-count.ts';
import deviceSpacing from '../quantities/device-spacing.ts';
import taperLength from '../quantities/taper-length.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'device-count-taper-as-spaced',
  title: 'devices along the taper, spaced as said',
  finds: deviceCount,
  by: plus(roundUp(over(taperLength, deviceSpacing)), 1),
  bothWays: false,
  because: 'One more than the spaces.',
  sources: [geometry],
  examples: [
    {
      given: { 'taper-length': [660, 'ft'], 'device-spacing': [50, 'ft'] },
      finds: [15, '1'],
      source: '660 ÷ 50 = 13.2: 14 spaces, 15 devices',
    },
  ],
});
