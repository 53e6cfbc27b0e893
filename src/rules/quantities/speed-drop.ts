import { manual } from '../manual.ts';
import { quantity } from '../shapes.ts';

export default quantity({
  id: 'speed-drop',
  title: 'drop in the speed limit',
  dimension: 'speed',
  units: { us: 'mph', metric: 'km/h' },
  rounding: { us: 'whole', metric: 'whole' },
  because: 'Some drivers slow and some do not; the wider the gap between them, the more they hit each other.',
  sources: [manual('section 6B.01')],
  roles: { after: ['drop', 'lower', 'less', 'slower'], before: ['drop', 'lower', 'reduce', 'cut'] },
  setting: ['limit', 'speed'],
  bare: false,
  question: {
    text: 'By how much is the limit lowered?',
    ease: 1,
    choices: [
      { number: 5, unit: 'mph' },
      { number: 10, unit: 'mph' },
      { number: 20, unit: 'mph' },
    ],
  },
  plausible: { min: { number: 1, unit: 'mph' }, max: { number: 60, unit: 'mph' } },
});
