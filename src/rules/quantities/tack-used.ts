import { quantity } from '../shapes.ts';
import { virginia } from '../sources-craft.ts';

export default quantity({
  id: 'tack-used',
  title: 'tack used',
  dimension: 'volume',
  units: { us: 'gal', metric: 'L' },
  rounding: { us: 'whole', metric: 'whole' },
  because: 'What went out of the tank is on the road: it checks the rate that was set.',
  sources: [virginia('ch. 8, HMA-8, problems 1 to 3')],
  cues: [
    'how-many used|sprayed ?tack -ton -mix -#mass',
    'gallon used',
    'stick used',
    'stick then|to #number|#volume -rate -drum -roller -tire -shoe',
  ],
  roles: { after: ['used', 'out', 'gone'], before: ['used', 'shot', 'sprayed', 'put'] },
  setting: ['used', 'out', 'gone'],
  bare: false,
  beside: ['tack-rate', 'tack-area'],
  usedAt: ['tack', 'record'],
});
