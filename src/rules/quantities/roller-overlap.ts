import { quantity } from '../shapes.ts';
import { florida, navyBasic, rollerArticle } from '../sources-craft.ts';

export default quantity({
  id: 'roller-overlap',
  title: 'overlap of the roller lanes',
  dimension: 'length',
  units: { us: 'in', metric: 'mm' },
  rounding: { us: 'eighths', metric: 'whole' },
  because: 'Without overlap a line stays between two lanes that neither has rolled.',
  sources: [florida('section 330: at least 6 in'), rollerArticle('6 in'), navyBasic('ch. 11: 3 to 4 in on hot mix')],
  cues: ['roller overlap', 'overlap roller|drum|lane', 'how-many overlap', 'what overlap'],
  roles: { after: ['overlap', 'lap'], before: ['overlap', 'lap'] },
  setting: ['roller', 'roll', 'rolled', 'drum', 'lane', 'lap'],
  saidAs: [{ cues: ['no+overlap|lap', 'zero+overlap|lap', 'touch strip|lane -how -rut'], number: 0, unit: 'in' }],
  bare: false,
  default: { number: 6, unit: 'in' },
  plausible: { min: { number: 0, unit: 'in' }, max: { number: 60, unit: 'in' } },
  asks: 'What overlap for the roller?',
  beside: ['roller-lanes'],
  usedAt: ['roll-lift', 'final-roll'],
});
