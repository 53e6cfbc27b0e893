import { commonPractice, quantity } from '../shapes.ts';

export default quantity({
  id: 'loads-left',
  title: 'loads still needed',
  dimension: 'count',
  units: { us: '1', metric: '1' },
  rounding: { us: 'up', metric: 'up' },
  counted: true,
  because: 'The plant sells loads, and it stops loading at some hour.',
  sources: [commonPractice],
  cues: ['how-many more+load|truck', 'more+load|truck need|left', 'how-many+load|truck more|left|still'],
  asks: 'How many more loads?',
  beside: ['tons-left'],
});
