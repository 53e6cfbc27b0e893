import { commonPractice, quantity } from '../shapes.ts';
import { bladeSpreading } from '../sources-craft.ts';

export default quantity({
  id: 'blade-length',
  title: 'length of the moldboard',
  dimension: 'length',
  units: { us: 'ft', metric: 'm' },
  rounding: { us: 'tenth', metric: 'tenth' },
  because: 'End to end along the edge, extensions included.',
  sources: [bladeSpreading('blade spreading: a blade of at least 10 ft'), commonPractice],
  roles: { after: ['blade', 'grader'], before: ['blade', 'strip'] },
  setting: ['blade', 'grader', 'strip', 'swath'],
  bare: false,
  default: { number: 12, unit: 'ft' },
  plausible: { min: { number: 4, unit: 'ft' }, max: { number: 26, unit: 'ft' } },
  beside: ['blade-reach'],
  usedAt: ['windrow', 'first-lift'],
});
