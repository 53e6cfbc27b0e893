import { over, plus, roundUp } from '../../calc/expression.ts';
import deviceCount from '../quantities/device-count.ts';
import deviceSpacingTaper from '../quantities/device-spacing-taper.ts';
import taperNeeded from '../quantities/taper-needed.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'device-count-taper-needed',
  title: 'devices along a taper of the kind named',
  finds: deviceCount,
  by: plus(roundUp(over(taperNeeded, deviceSpacingTaper)), 1),
  bothWays: false,
  second: true,
  because: 'One more than the spaces, and no space wider than recommended.',
  sources: [geometry],
  examples: [
    {
      given: { 'taper-needed': [100, 'ft'], 'device-spacing-taper': [20, 'ft'] },
      finds: [6, '1'],
      source: '100 ÷ 20 = 5 spaces, 6 devices',
    },
  ],
});
