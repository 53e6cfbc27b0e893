import { geometry, quantity } from '../shapes.ts';

export default quantity({
  id: 'windrow-section-all',
  title: 'end area of one row for all lifts',
  dimension: 'area',
  units: { us: 'ft2', metric: 'm2' },
  rounding: { us: 'hundredth', metric: 'thousandth' },
  because: 'All the mix of the patch put in one row, before it is split into lifts.',
  sources: [geometry],
  cues: ['windrow all|whole+lift'],
  bare: false,
  beside: ['windrow-section'],
  usedAt: ['windrow'],
});
