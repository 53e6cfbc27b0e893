import { commonPractice, quantity } from '../shapes.ts';
import { napa } from '../sources-craft.ts';

export default quantity({
  id: 'wait-time',
  title: 'waiting at the patch',
  dimension: 'time',
  units: { us: 'min', metric: 'min' },
  rounding: { us: 'whole', metric: 'whole' },
  because: 'Flaggers, the truck ahead, the blade still working: none is counted unless it is said.',
  sources: [napa('6.2'), commonPractice],
  roles: { after: ['wait'], before: ['wait'] },
  setting: ['wait'],
  bare: { us: 'min', metric: 'min' },
  default: { number: 0, unit: 'min' },
  plausible: { min: { number: 0, unit: 'min' }, max: { number: 240, unit: 'min' } },
  beside: ['cycle-time'],
});
