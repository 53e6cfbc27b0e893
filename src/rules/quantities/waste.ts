import { quantity } from '../shapes.ts';
import { navyAdvanced } from '../sources-craft.ts';

export default quantity({
  id: 'waste',
  title: 'extra for waste',
  dimension: 'ratio',
  units: { us: '%', metric: '%' },
  rounding: { us: 'tenth', metric: 'tenth' },
  because:
    'Some mix stays in beds and on tools, goes over the edges, or fills lows nobody measured; a crew new to it, or much handwork, loses twice as much.',
  sources: [navyAdvanced('p. 8-31')],
  roles: { after: ['waste', 'extra', 'shrink', 'spill', 'more'], before: ['waste', 'extra', 'plus', 'add'] },
  saidAs: [{ cues: ['no|without+waste', 'no|without+extra', 'net'], number: 0, unit: '%' }],
  bare: false,
  default: { number: 5, unit: '%' },
  plausible: { min: { number: 0, unit: '%' }, max: { number: 40, unit: '%' } },
});
