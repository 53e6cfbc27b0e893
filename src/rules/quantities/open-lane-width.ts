import { manual } from '../manual.ts';
import { quantity } from '../shapes.ts';

export default quantity({
  id: 'open-lane-width',
  title: 'lane left open',
  dimension: 'length',
  units: { us: 'ft', metric: 'm' },
  rounding: { us: 'tenth', metric: 'tenth' },
  because: 'What traffic has left to pass on, from the cones, the blade or the row to the far edge.',
  sources: [manual('section 6N.07')],
  roles: { after: ['left', 'open', 'pass'], before: ['only', 'left', 'open'] },
  setting: ['left', 'open', 'pass'],
  bare: false,
  question: {
    text: 'How wide is the lane that is left open?',
    ease: 1,
    choices: [
      { number: 9, unit: 'ft' },
      { number: 10, unit: 'ft' },
      { number: 11, unit: 'ft' },
    ],
  },
  plausible: { min: { number: 4, unit: 'ft' }, max: { number: 40, unit: 'ft' } },
});
