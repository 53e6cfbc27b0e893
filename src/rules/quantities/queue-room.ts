import { commonPractice, quantity } from '../shapes.ts';

export default quantity({
  id: 'queue-room',
  title: 'road each stopped vehicle takes',
  dimension: 'length',
  units: { us: 'ft', metric: 'm' },
  rounding: { us: 'whole', metric: 'tenth' },
  because: 'A car and the gap before it; trucks take more.',
  sources: [commonPractice],
  bare: false,
  default: { number: 25, unit: 'ft' },
});
