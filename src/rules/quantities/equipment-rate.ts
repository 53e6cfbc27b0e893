import { commonPractice, quantity } from '../shapes.ts';

export default quantity({
  id: 'equipment-rate',
  title: 'equipment, all machines',
  dimension: 'wage',
  units: { us: 'USD/h', metric: 'USD/h' },
  rounding: { us: 'hundredth', metric: 'hundredth' },
  because: 'The hourly rates of all machines and trucks, added up.',
  sources: [commonPractice],
  roles: {
    after: ['equipment', 'machine', 'iron', 'hour'],
    before: ['equipment', 'machine', 'iron', 'grader', 'roller', 'broom', 'loader', 'distributor'],
  },
  setting: ['equipment', 'machine', 'iron', 'grader', 'roller', 'broom', 'loader', 'distributor'],
  summed: ['grader', 'roller', 'broom', 'loader', 'distributor'],
  bare: { us: 'USD/h', metric: 'USD/h' },
  question: { text: 'What do all the machines together cost an hour?', ease: 3, choices: [] },
  plausible: { min: { number: 10, unit: 'USD/h' }, max: { number: 5000, unit: 'USD/h' } },
  beside: ['equipment-cost'],
  note: 'Published disaster rates leave the operator out and pay nothing for standing by.',
});
