import { times } from '../../calc/expression.ts';
import materialCost from '../quantities/material-cost.ts';
import materialPrice from '../quantities/material-price.ts';
import premixMass from '../quantities/premix-mass.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'material-cost',
  title: 'cost of the mix in place',
  finds: materialCost,
  by: times(premixMass, materialPrice),
  because: 'Tons times the price of a ton.',
  sources: [geometry],
  examples: [
    {
      given: { 'premix-mass': [80, 'ton'], 'material-price': [85, 'USD/ton'] },
      finds: [6800, 'USD'],
      source: 'worked out by hand',
    },
  ],
});
