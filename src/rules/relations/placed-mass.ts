import { times } from '../../calc/expression.ts';
import loadsPlaced from '../quantities/loads-placed.ts';
import placedMass from '../quantities/placed-mass.ts';
import truckPayload from '../quantities/truck-payload.ts';
import { commonPractice, relation } from '../shapes.ts';

export default relation({
  id: 'placed-mass',
  title: 'tons put down by loads',
  finds: placedMass,
  by: times(loadsPlaced, truckPayload),
  keeps: [loadsPlaced, truckPayload],
  because: 'Loads of one size add up; tickets are surer.',
  sources: [commonPractice],
  examples: [
    {
      given: { 'loads-placed': [3, '1'], 'truck-payload': [14, 'ton'] },
      finds: [42, 'ton'],
      source: 'worked by hand: 3 × 14',
    },
  ],
});
