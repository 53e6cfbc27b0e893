import { manual } from '../manual.ts';
import { quantity } from '../shapes.ts';

export default quantity({
  id: 'posted-speed',
  title: 'speed before the work',
  dimension: 'speed',
  units: { us: 'mph', metric: 'km/h' },
  rounding: { us: 'whole', metric: 'whole' },
  because:
    'Tapers, buffers and cones are sized for how fast people really come: the posted limit, or the speed 85 in 100 keep to before the work where that is higher. A lower limit put up for the work does not shorten them.',
  sources: [manual('Tables 6B-2 and 6B-4, meaning of S')],
  alsoCalled: ['posted limit', '85th percentile speed', 'operating speed'],
  roles: {
    after: [
      'posted',
      'limit',
      'zone',
      'traffic',
      'road',
      'highway',
      'street',
      'urban',
      'rural',
      'expressway',
      'residential',
    ],
    before: ['posted', 'limit', 'speed', 'at', 'goes', 'running', 'doing', 'urban', 'rural', 'expressway'],
  },
  plain: true,
  bare: { us: 'mph', metric: 'km/h' },
  question: {
    text: 'What is the posted speed, or the speed traffic really keeps where that is higher?',
    ease: 1,
    choices: [
      { number: 25, unit: 'mph' },
      { number: 35, unit: 'mph' },
      { number: 45, unit: 'mph' },
      { number: 55, unit: 'mph' },
      { number: 65, unit: 'mph' },
    ],
  },
  plausible: { min: { number: 5, unit: 'mph' }, max: { number: 85, unit: 'mph' } },
});
