import { times } from '../../calc/expression.ts';
import tackMass from '../quantities/tack-mass.ts';
import tackVolume from '../quantities/tack-volume.ts';
import tackWeight from '../quantities/tack-weight.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'tack-mass',
  title: 'tack by weight',
  finds: tackMass,
  by: times(tackVolume, tackWeight),
  because: 'Gallons times what one weighs.',
  sources: [geometry],
  examples: [
    {
      given: { 'tack-volume': [238.095238, 'gal'], 'tack-weight': [8.4, 'lb/gal'] },
      finds: [1, 'ton'],
      within: 1e-6,
      source: 'worked out by hand: 2,000 ÷ 8.4',
    },
  ],
});
