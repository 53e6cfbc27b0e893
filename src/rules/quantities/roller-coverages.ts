import { commonPractice, quantity } from '../shapes.ts';
import { navyBasic } from '../sources-craft.ts';

export default quantity({
  id: 'roller-coverages',
  title: 'roller coverages',
  dimension: 'count',
  units: { us: '1', metric: '1' },
  rounding: { us: 'up', metric: 'up' },
  counted: true,
  because: 'Once over the whole width packs the top; it takes about three before the drum stops sinking in.',
  sources: [navyBasic('ch. 11: at least 3 coverages for intermediate rolling'), commonPractice],
  cues: ['how-many coverage', 'how-many times|time roll|over|rolled', 'coverage roller'],
  alsoCalled: ['coverages', 'times over'],
  roles: { after: ['coverage', 'times', 'time', 'pass'], before: ['coverage'] },
  setting: ['roll', 'rolled', 'roller', 'drum', 'coverage'],
  default: { number: 3, unit: '1', last: true },
  plausible: { min: { number: 1, unit: '1' }, max: { number: 8, unit: '1' } },
  asks: 'How many coverages?',
  beside: ['roller-passes'],
  usedAt: ['roll-lift', 'final-roll'],
});
