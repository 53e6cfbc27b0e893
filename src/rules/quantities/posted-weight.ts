import { quantity } from '../shapes.ts';
import { federalWeights } from '../sources-craft.ts';

export default quantity({
  id: 'posted-weight',
  title: 'legal or posted weight of the whole truck',
  dimension: 'mass',
  units: { us: 'ton', metric: 't' },
  rounding: { us: 'tenth', metric: 'tenth' },
  because: 'A bridge or a road carries the truck and its load together, so the sign means both.',
  sources: [federalWeights('axle and gross weights')],
  roles: {
    after: ['bridge', 'posting', 'posted', 'post', 'gross'],
    before: ['bridge', 'posting', 'posted', 'post', 'gross'],
  },
  setting: ['bridge', 'posting', 'gross', 'truck', 'haul', 'carry', 'weight', 'cross'],
  bare: false,
  bareTold: { us: 'ton', metric: 't' },
  question: {
    text: 'What total weight is posted, or legal for the whole truck?',
    ease: 7,
    choices: [
      { number: 10, unit: 'ton' },
      { number: 15, unit: 'ton' },
      { number: 20, unit: 'ton' },
    ],
  },
  plausible: { min: { number: 1, unit: 'ton' }, max: { number: 100, unit: 'ton' } },
});
