import { manual } from '../manual.ts';
import { quantity } from '../shapes.ts';

export default quantity({
  id: 'sign-height',
  title: 'height under the sign',
  dimension: 'length',
  units: { us: 'ft', metric: 'm' },
  rounding: { us: 'tenth', metric: 'tenth' },
  because: 'Over parked cars and heads, and over the grass; a low stand is for a few days.',
  sources: [manual('section 6F.02')],
  roles: { after: ['high', 'up'], before: ['height', 'bottom'] },
  setting: ['sign'],
  bare: false,
  question: {
    text: 'How high is the bottom edge of the sign above the road?',
    ease: 1,
    choices: [
      { number: 1, unit: 'ft' },
      { number: 5, unit: 'ft' },
      { number: 7, unit: 'ft' },
    ],
  },
  plausible: { min: { number: 0.1, unit: 'ft' }, max: { number: 30, unit: 'ft' } },
});
