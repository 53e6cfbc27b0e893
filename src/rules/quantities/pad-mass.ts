import { quantity } from '../shapes.ts';
import { navyBasic } from '../sources-craft.ts';

export default quantity({
  id: 'pad-mass',
  title: 'gain of the test pad',
  dimension: 'mass',
  units: { us: 'lb', metric: 'kg' },
  rounding: { us: 'hundredth', metric: 'thousandth' },
  because: 'A pad of known size laid under the spray weighs more by what fell on it.',
  sources: [navyBasic('p. 489 of the web edition: pads after ASTM D2995')],
  cues: ['pad gain|weigh|weight', 'how-many pad gain'],
  alsoCalled: ['pad test', 'yield test', 'wand check'],
  roles: { after: ['gain', 'pad', 'heavier'], before: ['gain', 'pad', 'gains'] },
  setting: ['pad'],
  bare: false,
  beside: ['tack-rate', 'pad-area'],
  usedAt: ['tack'],
});
