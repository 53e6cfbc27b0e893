import { commonPractice, quantity } from '../shapes.ts';

export default quantity({
  id: 'side-slope',
  title: 'side slope of the row',
  dimension: 'count',
  units: { us: '1', metric: '1' },
  rounding: { us: 'hundredth', metric: 'hundredth' },
  because: 'Loose mix stands about one and a half out to one up; sticky or cool mix stands steeper.',
  sources: [commonPractice],
  cues: ['slope windrow', 'side+slope'],
  roles: { after: ['slope', 'side'], before: ['slope', 'side'] },
  setting: ['windrow'],
  parts: 'to-one',
  default: { number: 1.5, unit: '1' },
  plausible: { min: { number: 0.4, unit: '1' }, max: { number: 6, unit: '1' } },
  beside: ['windrow-height', 'windrow-base'],
  usedAt: ['windrow'],
  note: 'With a tape at hand measure height and base instead.',
});
