import { commonPractice, quantity } from '../shapes.ts';

export default quantity({
  id: 'grading-area-rate',
  title: 'area the blade covers in an hour',
  dimension: 'area-rate',
  units: { us: 'yd2/h', metric: 'm2/h' },
  rounding: { us: 'whole', metric: 'whole' },
  because: 'New road in every strip is the effective width less the overlap.',
  sources: [commonPractice],
  cues: ['area hour grader|blade', 'square+yard|feet hour grader|blade', 'production grader|blade'],
  bare: false,
  beside: ['blade-reach', 'grader-speed'],
});
