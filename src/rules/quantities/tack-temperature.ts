import { quantity } from '../shapes.ts';
import { ufcFlexible } from '../sources-craft.ts';

export default quantity({
  id: 'tack-temperature',
  title: 'temperature of the tack',
  dimension: 'temperature',
  units: { us: 'degF', metric: 'degC' },
  rounding: { us: 'whole', metric: 'whole' },
  because:
    'Warm tack is thin enough to fan out of the nozzles and takes more room in the tank than it will at 60 degF.',
  sources: [ufcFlexible('table 3-2: SS and CSS 70 to 160 degF, RS-1 70 to 140, CRS-1 125 to 185')],
  roles: { after: ['tank'], before: ['temperature', 'tack', 'at'] },
  setting: ['tack', 'tank', 'gallon', '#volume', 'correct', 'net', 'stick'],
  bare: false,
  bareTold: { us: 'degF', metric: 'degC' },
  plausible: { min: { number: 32, unit: 'degF' }, max: { number: 400, unit: 'degF' } },
  question: {
    text: 'How hot is the tack in the tank?',
    ease: 2,
    choices: [
      { number: 85, unit: 'degF' },
      { number: 120, unit: 'degF' },
      { number: 140, unit: 'degF' },
    ],
  },
  beside: ['tack-volume-60'],
  usedAt: ['tack'],
});
