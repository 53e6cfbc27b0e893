import { manual } from '../manual.ts';
import { quantity } from '../shapes.ts';

export default quantity({
  id: 'taper-length',
  title: 'taper laid out',
  dimension: 'length',
  units: { us: 'ft', metric: 'm' },
  rounding: { us: 'whole', metric: 'tenth' },
  because: 'The taper as it stands on the road, or as it is meant to be.',
  sources: [manual('Table 6B-3')],
  roles: { after: ['taper', 'merge'], before: ['taper', 'merge'] },
  setting: ['taper', 'merge'],
  bare: false,
  question: {
    text: 'How long is the taper?',
    ease: 2,
    choices: [
      { number: 100, unit: 'ft' },
      { number: 320, unit: 'ft' },
      { number: 660, unit: 'ft' },
    ],
  },
  plausible: { min: { number: 20, unit: 'ft' }, max: { number: 3000, unit: 'ft' } },
});
