import { geometry, quantity } from '../shapes.ts';

export default quantity({
  id: 'windrow-top',
  title: 'flat top of the row',
  dimension: 'length',
  units: { us: 'ft', metric: 'm' },
  rounding: { us: 'tenth', metric: 'hundredth' },
  because: 'A row that the blade has sized is flat on top.',
  sources: [geometry],
  roles: { after: ['top'], before: ['top'] },
  setting: ['top', 'flat'],
  bare: false,
  plausible: { min: { number: 1, unit: 'in' }, max: { number: 12, unit: 'ft' } },
  beside: ['windrow-section'],
  usedAt: ['windrow'],
});
