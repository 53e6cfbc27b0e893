import { over } from '../../calc/expression.ts';
import layingRate from '../quantities/laying-rate.ts';
import placedMass from '../quantities/placed-mass.ts';
import workHours from '../quantities/work-hours.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'laying-rate-placed',
  title: 'pace so far',
  finds: layingRate,
  by: over(placedMass, workHours),
  because: 'Tons put down over the hours it took.',
  sources: [geometry],
  examples: [
    {
      given: { 'placed-mass': [96, 'ton'], 'work-hours': [4, 'h'] },
      finds: [24, 'ton/h'],
      source: 'worked out by hand',
    },
  ],
});
