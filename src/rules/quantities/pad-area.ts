import { commonPractice, quantity } from '../shapes.ts';

export default quantity({
  id: 'pad-area',
  title: 'size of the test pad',
  dimension: 'area',
  units: { us: 'yd2', metric: 'm2' },
  rounding: { us: 'hundredth', metric: 'hundredth' },
  because: 'A pad of one square yard reads straight in gallons a square yard.',
  sources: [commonPractice],
  roles: { after: ['pad'], before: ['pad'] },
  setting: ['pad'],
  bare: false,
  default: { number: 1, unit: 'yd2' },
  plausible: { min: { number: 0.05, unit: 'yd2' }, max: { number: 10, unit: 'yd2' } },
  beside: ['tack-rate'],
});
