import { over, roundUp } from '../../calc/expression.ts';
import orderLoads from '../quantities/order-loads.ts';
import premixOrder from '../quantities/premix-order.ts';
import truckPayload from '../quantities/truck-payload.ts';
import { relation } from '../shapes.ts';
import { napa } from '../sources-craft.ts';

export default relation({
  id: 'order-loads',
  title: 'loads for the tons ordered',
  finds: orderLoads,
  by: roundUp(over(premixOrder, truckPayload)),
  plan: true,
  because: 'Part of a load still needs a truck.',
  sources: [napa('6.2: 13.1 trucks means 14')],
  examples: [
    {
      given: { 'premix-order': [46.2, 'ton'], 'truck-payload': [15, 'ton'] },
      finds: [4, '1'],
      source: 'worked by hand: 46.2 ÷ 15 is 3.08, rounded up; 44 tons in place would fit on three',
    },
  ],
});
