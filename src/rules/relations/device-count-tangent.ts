import { over, plus, roundUp } from '../../calc/expression.ts';
import deviceCount from '../quantities/device-count.ts';
import deviceRun from '../quantities/device-run.ts';
import deviceSpacingTangent from '../quantities/device-spacing-tangent.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'device-count-tangent',
  title: 'devices along the buffer and the work',
  finds: deviceCount,
  by: plus(roundUp(over(deviceRun, deviceSpacingTangent)), 1),
  bothWays: false,
  because: 'One more than the spaces, and no space wider than recommended.',
  sources: [geometry],
  examples: [
    {
      given: { 'device-run': [1495, 'ft'], 'device-spacing-tangent': [110, 'ft'] },
      finds: [15, '1'],
      source: '1,495 ÷ 110 = 13.6: 14 spaces, 15 devices',
    },
  ],
});
