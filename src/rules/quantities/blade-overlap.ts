import { commonPractice, quantity } from '../shapes.ts';

export default quantity({
  id: 'blade-overlap',
  title: 'overlap of the blade strips',
  dimension: 'length',
  units: { us: 'ft', metric: 'm' },
  rounding: { us: 'tenth', metric: 'hundredth' },
  because: 'Each strip takes up the edge of the last, or a ridge stays between.',
  sources: [commonPractice],
  roles: { after: ['overlap'], before: ['overlap'] },
  setting: ['blade', 'grader', 'strip', 'swath', 'angle', 'pass'],
  bare: false,
  default: { number: 1, unit: 'ft' },
  plausible: { min: { number: 1, unit: 'in' }, max: { number: 5, unit: 'ft' } },
  beside: ['blade-passes'],
  usedAt: ['first-lift'],
});
