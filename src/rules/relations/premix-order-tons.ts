import { plus, times } from '../../calc/expression.ts';
import orderEnds from '../choices/order-ends.ts';
import premixMass from '../quantities/premix-mass.ts';
import premixOrder from '../quantities/premix-order.ts';
import waste from '../quantities/waste.ts';
import { relation } from '../shapes.ts';
import { navyAdvanced } from '../sources-craft.ts';

export default relation({
  id: 'premix-order-tons',
  title: 'tons to order from tons in place',
  finds: premixOrder,
  by: times(premixMass, plus(1, waste)),
  second: true,
  plan: true,
  keeps: [waste],
  when: [{ choice: orderEnds, is: ['left-out'] }],
  because: 'A share of what goes in is lost on the way.',
  sources: [navyAdvanced('p. 8-31: 5 or 10 % for waste and handwork')],
  note: 'The mix past the ends is not in it: give length and width to have it counted.',
  examples: [
    {
      given: { 'premix-mass': [44, 'ton'], waste: [5, '%'], 'order-ends': 'left-out' },
      finds: [46.2, 'ton'],
      source: 'worked by hand: 44 × 1.05',
    },
  ],
});
