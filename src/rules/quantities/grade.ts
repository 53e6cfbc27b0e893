import { californiaManual } from '../manual.ts';
import { quantity } from '../shapes.ts';

export default quantity({
  id: 'grade',
  title: 'downgrade toward the work',
  dimension: 'ratio',
  units: { us: '%', metric: '%' },
  rounding: { us: 'tenth', metric: 'tenth' },
  because: 'Going down, a car takes longer to stop; going up, the level figure is kept for safety.',
  sources: [californiaManual('Table 6B-2(CA)')],
  alsoCalled: ['hill', 'slope of the road'],
  roles: { after: ['grade', 'downgrade', 'downhill', 'hill'], before: ['grade', 'downgrade', 'downhill'] },
  setting: ['grade', 'downgrade', 'downhill', 'hill'],
  bare: false,
  question: {
    text: 'How steep does the road go down toward the work?',
    ease: 3,
    choices: [
      { number: 3, unit: '%' },
      { number: 6, unit: '%' },
      { number: 9, unit: '%' },
    ],
  },
  default: { number: 0, unit: '%' },
  plausible: { min: { number: -15, unit: '%' }, max: { number: 15, unit: '%' } },
});
