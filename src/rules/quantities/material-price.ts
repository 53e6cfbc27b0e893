import { commonPractice, quantity } from '../shapes.ts';

export default quantity({
  id: 'material-price',
  title: 'price of the mix',
  dimension: 'price',
  units: { us: 'USD/ton', metric: 'USD/t' },
  rounding: { us: 'hundredth', metric: 'hundredth' },
  because: 'What the plant bills; prices differ by place and season, so none is assumed.',
  sources: [commonPractice],
  roles: { after: ['ton'], before: ['price', 'at', 'cost', 'pay'] },
  setting: ['cost', 'price', 'pay', 'total', 'bill', 'spent', 'budget', 'run', 'job'],
  bare: { us: 'USD/ton', metric: 'USD/t' },
  question: { text: 'What does the mix cost a ton?', ease: 3, choices: [] },
  plausible: { min: { number: 1, unit: 'USD/ton' }, max: { number: 2000, unit: 'USD/ton' } },
  beside: ['material-cost'],
});
