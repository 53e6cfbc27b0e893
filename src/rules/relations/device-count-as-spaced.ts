import { over, plus, roundUp } from '../../calc/expression.ts';
import deviceCount from '../quantities/device-count.ts';
import deviceRun from '../quantities/device-run.ts';
import deviceSpacing from '../quantities/device-spacing.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'device-count-as-spaced',
  title: 'devices along a line, spaced as said',
  finds: deviceCount,
  by: plus(roundUp(over(deviceRun, deviceSpacing)), 1),
  bothWays: false,
  because: 'One more than the spaces.',
  sources: [geometry],
  examples: [
    {
      given: { 'device-run': [1000, 'ft'], 'device-spacing': [50, 'ft'] },
      finds: [21, '1'],
      source: '1,000 ÷ 50 = 20 spaces, 21 devices',
    },
  ],
});
