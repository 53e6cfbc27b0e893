import { commonPractice, quantity } from '../shapes.ts';

export default quantity({
  id: 'labor-rate',
  title: 'labor, one person',
  dimension: 'wage',
  units: { us: 'USD/h', metric: 'USD/h' },
  rounding: { us: 'hundredth', metric: 'hundredth' },
  because: 'With what the employer adds to the wage.',
  sources: [commonPractice],
  roles: {
    after: ['labor', 'man', 'men', 'person', 'wage', 'worker', 'hour'],
    before: ['labor', 'wage', 'men', 'man', 'people', 'crew', 'guy', 'laborer'],
  },
  setting: ['labor', 'guy', 'laborer', 'man', 'men', 'person', 'wage', 'worker', 'crew', 'hand', 'people'],
  bare: { us: 'USD/h', metric: 'USD/h' },
  question: { text: 'What does one person cost an hour?', ease: 3, choices: [] },
  plausible: { min: { number: 1, unit: 'USD/h' }, max: { number: 200, unit: 'USD/h' } },
  beside: ['labor-cost'],
});
