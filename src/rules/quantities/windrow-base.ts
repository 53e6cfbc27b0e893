import { commonPractice, geometry, quantity } from '../shapes.ts';

export default quantity({
  id: 'windrow-base',
  title: 'base of the row',
  dimension: 'length',
  units: { us: 'ft', metric: 'm' },
  rounding: { us: 'tenth', metric: 'hundredth' },
  because: 'The grader straddles the row; past about 5 ft it no longer goes between the wheels.',
  sources: [geometry, commonPractice],
  cues: ['how+wide windrow', 'windrow base', 'windrow width', 'how-many wide windrow'],
  roles: { after: ['base', 'bottom'], before: ['base', 'bottom'] },
  setting: ['windrow', 'base'],
  bare: false,
  plausible: { min: { number: 6, unit: 'in' }, max: { number: 7, unit: 'ft' } },
  asks: 'How wide is the row at the base?',
  beside: ['windrow-height', 'windrow-section'],
  usedAt: ['windrow'],
  enough: 'the-same',
});
