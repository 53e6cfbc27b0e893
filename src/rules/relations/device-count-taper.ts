import { over, plus, roundUp } from '../../calc/expression.ts';
import deviceCount from '../quantities/device-count.ts';
import deviceSpacingTaper from '../quantities/device-spacing-taper.ts';
import taperLength from '../quantities/taper-length.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'device-count-taper',
  title: 'devices along the taper',
  finds: deviceCount,
  by: plus(roundUp(over(taperLength, deviceSpacingTaper)), 1),
  bothWays: false,
  because: 'One more than the spaces, and no space wider than recommended.',
  sources: [geometry],
  examples: [
    {
      given: { 'taper-length': [660, 'ft'], 'device-spacing-taper': [55, 'ft'] },
      finds: [13, '1'],
      source: '660 ÷ 55 = 12 spaces, 13 devices',
    },
    {
      given: { 'taper-length': [225, 'ft'], 'device-spacing-taper': [35, 'ft'] },
      finds: [8, '1'],
      source: '225 ÷ 35 = 6.4: 7 spaces, 8 devices',
    },
  ],
});
