import { manual } from '../manual.ts';
import { quantity } from '../shapes.ts';

export default quantity({
  id: 'cone-height',
  title: 'cone height',
  dimension: 'length',
  units: { us: 'in', metric: 'mm' },
  rounding: { us: 'whole', metric: 'whole' },
  because: 'A low cone drops out of sight at speed and in headlights.',
  sources: [manual('section 6K.03')],
  roles: { after: ['cone', 'tall', 'high'], before: ['cone'] },
  setting: ['cone'],
  bare: false,
  question: {
    text: 'How tall are the cones?',
    ease: 1,
    choices: [
      { number: 18, unit: 'in' },
      { number: 28, unit: 'in' },
      { number: 36, unit: 'in' },
    ],
  },
  plausible: { min: { number: 6, unit: 'in' }, max: { number: 60, unit: 'in' } },
});
