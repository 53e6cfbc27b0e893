import { geometry, quantity } from '../shapes.ts';

export default quantity({
  id: 'rut-section',
  title: 'section of one rut',
  dimension: 'area',
  units: { us: 'ft2', metric: 'm2' },
  rounding: { us: 'thousandth', metric: 'thousandth' },
  because: 'What is missing from the road in one slice across the rut.',
  sources: [geometry],
  cues: ['rut section', 'section rut'],
  bare: false,
});
