import { commonPractice, quantity } from '../shapes.ts';

export default quantity({
  id: 'tack-cost',
  title: 'cost of the tack',
  dimension: 'money',
  units: { us: 'USD', metric: 'USD' },
  rounding: { us: 'whole', metric: 'whole' },
  because: 'As billed, gallons or tons.',
  sources: [commonPractice],
  roles: { after: ['tack'], before: ['tack'] },
  setting: ['cost'],
  bare: false,
  question: { text: 'What does the tack cost, all of it?', ease: 4, choices: [] },
  beside: ['job-cost'],
});
