import { over } from '../../calc/expression.ts';
import patchArea from '../quantities/patch-area.ts';
import placedMass from '../quantities/placed-mass.ts';
import placedRate from '../quantities/placed-rate.ts';
import { relation } from '../shapes.ts';
import { virginia } from '../sources-craft.ts';

export default relation({
  id: 'placed-rate',
  title: 'pounds a square yard put down',
  finds: placedRate,
  by: over(placedMass, patchArea),
  bothWays: false,
  plan: true,
  because: 'Weight down over area.',
  sources: [virginia('ch. 9, p. 9-2')],
  examples: [
    {
      given: { 'placed-mass': [22, 'ton'], 'patch-area': [200, 'yd2'] },
      finds: [220, 'lb/yd2'],
      source: 'worked by hand: 44,000 ÷ 200',
    },
  ],
});
