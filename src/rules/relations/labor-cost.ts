import { times } from '../../calc/expression.ts';
import laborCost from '../quantities/labor-cost.ts';
import laborHours from '../quantities/labor-hours.ts';
import laborRate from '../quantities/labor-rate.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'labor-cost',
  title: 'cost of labor',
  finds: laborCost,
  by: times(laborHours, laborRate),
  because: 'Labor hours times the rate.',
  sources: [geometry],
  examples: [
    {
      given: { 'labor-hours': [72, 'h'], 'labor-rate': [38, 'USD/h'] },
      finds: [2736, 'USD'],
      source: 'worked out by hand',
    },
  ],
});
