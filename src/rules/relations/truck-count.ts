import { over, roundUp } from '../../calc/expression.ts';
import premixMass from '../quantities/premix-mass.ts';
import truckCount from '../quantities/truck-count.ts';
import truckPayload from '../quantities/truck-payload.ts';
import { relation } from '../shapes.ts';
import { napa } from '../sources-craft.ts';

export default relation({
  id: 'truck-count',
  title: 'loads for the tons in place',
  finds: truckCount,
  by: roundUp(over(premixMass, truckPayload)),
  plan: true,
  because: 'Part of a load still needs a truck.',
  sources: [napa('6.2: 13.1 trucks means 14')],
  examples: [
    {
      given: { 'premix-mass': [60, 'ton'], 'truck-payload': [14, 'ton'] },
      finds: [5, '1'],
      source: 'worked by hand: 60 ÷ 14 is 4.3, rounded up as NAPA 6.2 rounds 13.1 to 14',
    },
  ],
});
