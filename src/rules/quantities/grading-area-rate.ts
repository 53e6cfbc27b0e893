import { commonPractice, quantity } from '../shapes.ts';

export default quantity({
  id: 'grading-area-rate',
  title: 'area the blade covers in an hour',
  dimension: 'area-rate',
  units: { us: 'yd2/h', metric: 'm2/h' },
  rounding: { us: 'whole', metric: 'whole' },
  because: 'New road in every strip is the effective width less the overlap.',
  sources: [commonPractice],
  cues: [
    'area hour grader|blade',
    'square+yard|feet hour grader|blade',
    'production grader|blade',
    'how-many area hour grader|blade',
    'cover hour grader|blade',
  ],
  bare: false,
  asks: 'How many square yards an hour, grader?',
  beside: ['blade-reach', 'grader-speed'],
});
