import { commonPractice, quantity } from '../shapes.ts';

export default quantity({
  id: 'cooling-air',
  title: 'air over the hot lift',
  dimension: 'temperature',
  units: { us: 'degF', metric: 'degC' },
  rounding: { us: 'whole', metric: 'whole' },
  because: 'The top of the mat gives its heat to the air.',
  sources: [commonPractice],
  bare: false,
});
