import { times } from '../../calc/expression.ts';
import materialPrice from '../quantities/material-price.ts';
import orderCost from '../quantities/order-cost.ts';
import premixOrder from '../quantities/premix-order.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'order-cost',
  title: 'cost of the mix ordered',
  finds: orderCost,
  by: times(premixOrder, materialPrice),
  bothWays: false,
  because: 'Tons ordered times the price of a ton.',
  sources: [geometry],
  examples: [
    {
      given: { 'premix-order': [84, 'ton'], 'material-price': [85, 'USD/ton'] },
      finds: [7140, 'USD'],
      source: 'worked out by hand',
    },
  ],
});
