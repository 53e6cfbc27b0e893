import { manual } from '../manual.ts';
import { quantity } from '../shapes.ts';

export default quantity({
  id: 'sign-distance',
  title: 'sign distance as found',
  dimension: 'length',
  units: { us: 'ft', metric: 'm' },
  rounding: { us: 'whole', metric: 'tenth' },
  because: 'From the taper or the flagger to the nearest sign, or from one sign to the next, as they stand.',
  sources: [manual('Table 6B-1')],
  roles: { after: ['apart', 'out', 'sign'], before: ['sign', 'apart'] },
  setting: ['sign'],
  bare: { us: 'ft', metric: 'm' },
  question: {
    text: 'How far is the sign from the taper, or from the next sign?',
    ease: 1,
    choices: [
      { number: 350, unit: 'ft' },
      { number: 500, unit: 'ft' },
      { number: 1000, unit: 'ft' },
    ],
  },
  plausible: { min: { number: 10, unit: 'ft' }, max: { number: 3, unit: 'mi' } },
});
