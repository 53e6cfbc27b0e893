import { quantity } from '../shapes.ts';
import { rollerArticle } from '../sources-craft.ts';

export default quantity({
  id: 'drum-width',
  title: 'width of the roller drum',
  dimension: 'length',
  units: { us: 'ft', metric: 'm' },
  rounding: { us: 'tenth', metric: 'hundredth' },
  because: 'The drum rolls its own width each trip, less what it laps over the last.',
  sources: [rollerArticle('12 ft lane: 4 lanes of a 4.5 ft drum, 3 of 5.5 ft, 2 of 7 ft')],
  cues: ['how+wide drum|roller', 'drum+width'],
  roles: { after: ['drum', 'roller'], before: ['drum', 'roller'] },
  bare: false,
  default: { number: 4.5, unit: 'ft' },
  plausible: { min: { number: 1.5, unit: 'ft' }, max: { number: 9, unit: 'ft' } },
  beside: ['roller-lanes'],
  usedAt: ['roll-lift', 'final-roll'],
});
