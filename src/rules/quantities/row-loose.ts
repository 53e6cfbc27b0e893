import { commonPractice, quantity } from '../shapes.ts';

export default quantity({
  id: 'row-loose',
  title: 'loose weight in the row',
  dimension: 'density',
  units: { us: 'lb/ft3', metric: 'kg/m3' },
  rounding: { us: 'whole', metric: 'whole' },
  because: 'Mix lying in a heap is full of air. A box of known size filled from the row and weighed gives it.',
  sources: [commonPractice],
  cues: ['loose+weight', 'loose mix weigh'],
  roles: { after: ['loose', 'windrow', 'heap'], before: ['loose', 'windrow', 'heap'] },
  setting: ['loose', 'windrow', 'heap'],
  bare: false,
  question: {
    text: 'What does the loose mix weigh, from a box of known size?',
    ease: 5,
    choices: [{ number: 105, unit: 'lb/ft3' }],
  },
  plausible: { min: { number: 70, unit: 'lb/ft3' }, max: { number: 140, unit: 'lb/ft3' } },
  asks: 'What does the loose mix weigh?',
  beside: ['windrow-section'],
  usedAt: ['windrow'],
});
