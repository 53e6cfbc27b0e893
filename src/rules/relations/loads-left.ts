import { constant, larger, over, roundUp } from '../../calc/expression.ts';
import loadsLeft from '../quantities/loads-left.ts';
import tonsLeft from '../quantities/tons-left.ts';
import truckPayload from '../quantities/truck-payload.ts';
import { relation } from '../shapes.ts';
import { napa } from '../sources-craft.ts';

export default relation({
  id: 'loads-left',
  title: 'loads for what is still needed',
  finds: loadsLeft,
  by: larger(constant(0, '1'), roundUp(over(tonsLeft, truckPayload))),
  plan: true,
  because: 'Part of a load still needs a truck, and more than enough needs none.',
  sources: [napa('6.2: 13.1 trucks means 14')],
  examples: [
    {
      given: { 'tons-left': [16, 'ton'], 'truck-payload': [15, 'ton'] },
      finds: [2, '1'],
      source: 'worked by hand: 16 ÷ 15 is 1.07, rounded up',
    },
  ],
});
