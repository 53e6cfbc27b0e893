import { constant, over } from '../../calc/expression.ts';
import areaPerTon from '../quantities/area-per-ton.ts';
import spreadRate from '../quantities/spread-rate.ts';
import { relation } from '../shapes.ts';
import { virginia } from '../sources-craft.ts';

export default relation({
  id: 'area-per-ton',
  title: 'area a short ton covers',
  finds: areaPerTon,
  by: over(constant(1, 'ton'), spreadRate),
  because: 'A ton over the pounds on each square yard.',
  sources: [virginia('ch. 9, p. 9-1')],
  examples: [
    {
      given: { 'spread-rate': [200, 'lb/yd2'] },
      finds: [10, 'yd2'],
      source: 'worked by hand: 2,000 ÷ 200',
    },
  ],
});
