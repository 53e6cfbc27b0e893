import { quantity } from '../shapes.ts';
import { navyBasic } from '../sources-craft.ts';

export default quantity({
  id: 'tank-time',
  title: 'time one tank lasts',
  dimension: 'time',
  units: { us: 'min', metric: 'min' },
  rounding: { us: 'whole', metric: 'whole' },
  because: 'What the tank holds, over what the pump gives in a minute.',
  sources: [navyBasic('distributor formulas, p. 492 of the web edition')],
  cues: [
    'how+long tank last|empty',
    'how-many minute tank|empty',
    'minute tank pump|#flow',
    'empty tank -how-far -feet -distance -footage -mile',
    'tank time',
    'last tank|#volume #flow|pump',
    'time|minute empty|dry pump|#flow',
  ],
  bare: false,
  beside: ['tank-volume', 'pump-rate'],
  usedAt: ['tack'],
  enough: 'no-larger',
});
