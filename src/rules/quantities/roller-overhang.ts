import { quantity } from '../shapes.ts';
import { rollerArticle } from '../sources-craft.ts';

export default quantity({
  id: 'roller-overhang',
  title: 'drum past each edge',
  dimension: 'length',
  units: { us: 'in', metric: 'mm' },
  rounding: { us: 'whole', metric: 'whole' },
  because: 'An edge is rolled only by a drum that goes past it.',
  sources: [rollerArticle('about 6 in past the outer edge and the joint')],
  cues: ['overhang', 'how-far roller|drum past|over edge'],
  roles: { after: ['overhang', 'past', 'over', 'out'], before: ['overhang', 'hang', 'stick', 'stick', 'hang'] },
  setting: ['drum', 'roller', 'overhang', 'hang'],
  bare: false,
  default: { number: 6, unit: 'in' },
  plausible: { min: { number: 0, unit: 'in' }, max: { number: 30, unit: 'in' } },
  beside: ['roller-lanes'],
  usedAt: ['roll-lift', 'final-roll'],
  caution: 'Overhang only on a firm, level, supported edge; on a soft edge or a drop-off stay back. Belt on.',
});
