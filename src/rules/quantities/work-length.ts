import { commonPractice, quantity } from '../shapes.ts';

export default quantity({
  id: 'work-length',
  title: 'work space with room to turn',
  dimension: 'length',
  units: { us: 'ft', metric: 'm' },
  rounding: { us: 'up', metric: 'up' },
  because: 'The crew needs more road than the patch: ground to turn the grader and run off the roller at both ends.',
  sources: [commonPractice],
  cues: ['work+space|length how+long', 'room turn grader|roller', 'how+long work+space', 'room+turn length|how+long'],
  bare: false,
  asks: 'How long is the work space?',
  beside: ['zone-length-turning'],
  usedAt: ['traffic-control-up'],
});
