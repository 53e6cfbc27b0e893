import { plus, times } from '../../calc/expression.ts';
import tackOrder from '../quantities/tack-order.ts';
import tackVolume from '../quantities/tack-volume.ts';
import waste from '../quantities/waste.ts';
import { relation } from '../shapes.ts';
import { armyPaving, fm5436 } from '../sources-craft.ts';

export default relation({
  id: 'tack-order',
  title: 'tack with its loss',
  finds: tackOrder,
  by: times(tackVolume, plus(1, waste)),
  because: 'Handling loses a few in a hundred.',
  sources: [armyPaving('p. 17: 5 % handling loss'), fm5436('ch. 6, para 6-1')],
  examples: [
    {
      given: { 'tack-volume': [13200, 'gal'], waste: [5, '%'] },
      finds: [13860, 'gal'],
      source: 'FM 5-436, para 6-1: 3 miles × 25 ft at 0.3 gal/yd2, 5 % (inputs read, product worked out)',
    },
  ],
});
