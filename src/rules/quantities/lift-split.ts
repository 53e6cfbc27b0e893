import { commonPractice, quantity } from '../shapes.ts';

export default quantity({
  id: 'lift-split',
  title: 'lifts it takes instead',
  dimension: 'count',
  units: { us: '1', metric: '1' },
  rounding: { us: 'up', metric: 'up' },
  counted: true,
  because: 'What is too thick for one lift goes down in several, each rolled.',
  sources: [commonPractice],
  bare: false,
});
