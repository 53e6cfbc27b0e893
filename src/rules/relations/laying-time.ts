import { over } from '../../calc/expression.ts';
import layingRate from '../quantities/laying-rate.ts';
import layingTime from '../quantities/laying-time.ts';
import premixMass from '../quantities/premix-mass.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'laying-time',
  title: 'time to lay the mix',
  finds: layingTime,
  by: over(premixMass, layingRate),
  because: 'Tons in place over tons an hour.',
  sources: [geometry],
  examples: [
    {
      given: { 'premix-mass': [120, 'ton'], 'laying-rate': [60, 'ton/h'] },
      finds: [2, 'h'],
      source: 'worked out by hand',
    },
  ],
});
