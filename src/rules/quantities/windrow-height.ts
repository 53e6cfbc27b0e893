import { geometry, quantity } from '../shapes.ts';

export default quantity({
  id: 'windrow-height',
  title: 'height of the row',
  dimension: 'length',
  units: { us: 'ft', metric: 'm' },
  rounding: { us: 'hundredth', metric: 'hundredth' },
  because: 'A row of the same end area is higher where its sides stand steeper.',
  sources: [geometry],
  cues: ['how+high|tall windrow', 'windrow height|high|tall'],
  roles: { after: ['high', 'tall', 'height'], before: ['high', 'height'] },
  setting: ['windrow'],
  bare: false,
  plausible: { min: { number: 3, unit: 'in' }, max: { number: 6, unit: 'ft' } },
  asks: 'How high is the row?',
  beside: ['windrow-base', 'windrow-section'],
  usedAt: ['windrow'],
  enough: 'the-same',
});
