import { manual } from '../manual.ts';
import { quantity } from '../shapes.ts';

export default quantity({
  id: 'device-spacing',
  title: 'device spacing as found',
  dimension: 'length',
  units: { us: 'ft', metric: 'm' },
  rounding: { us: 'whole', metric: 'tenth' },
  because: 'From one cone to the next as they stand, or as they are meant to.',
  sources: [manual('section 6K.01')],
  roles: {
    after: ['apart', 'spacing', 'between'],
    before: ['every', 'spacing', 'apart', 'cone', 'device', 'spaced', 'each', 'drum'],
  },
  setting: ['cone', 'device', 'drum', 'tangent'],
  bare: { us: 'ft', metric: 'm' },
  question: {
    text: 'How far apart do the cones stand?',
    ease: 1,
    choices: [
      { number: 20, unit: 'ft' },
      { number: 45, unit: 'ft' },
      { number: 90, unit: 'ft' },
    ],
  },
  plausible: { min: { number: 1, unit: 'ft' }, max: { number: 300, unit: 'ft' } },
});
