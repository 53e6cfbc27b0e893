import { manual } from '../manual.ts';
import { quantity } from '../shapes.ts';

export default quantity({
  id: 'buffer-found',
  title: 'buffer as laid out',
  dimension: 'length',
  units: { us: 'ft', metric: 'm' },
  rounding: { us: 'whole', metric: 'tenth' },
  because: 'From the end of the taper to the work, as it stands.',
  sources: [manual('section 6B.06')],
  roles: { after: ['buffer', 'empty', 'clear'], before: ['buffer', 'empty', 'clear'] },
  setting: ['buffer', 'empty', 'clear'],
  bare: false,
  question: {
    text: 'How long is the buffer as it stands?',
    ease: 2,
    choices: [
      { number: 200, unit: 'ft' },
      { number: 360, unit: 'ft' },
      { number: 495, unit: 'ft' },
    ],
  },
  plausible: { min: { number: 1, unit: 'ft' }, max: { number: 5000, unit: 'ft' } },
});
