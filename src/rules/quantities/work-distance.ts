import { commonPractice, quantity } from '../shapes.ts';

export default quantity({
  id: 'work-distance',
  title: 'length of one grader pass',
  dimension: 'length',
  units: { us: 'ft', metric: 'm' },
  rounding: { us: 'whole', metric: 'whole' },
  because: 'The patch, unless the pass runs longer.',
  sources: [commonPractice],
  roles: { after: ['run', 'stretch'], before: ['distance', 'run'] },
  bare: false,
  question: {
    text: 'How long is one pass?',
    ease: 2,
    choices: [
      { number: 300, unit: 'ft' },
      { number: 1000, unit: 'ft' },
      { number: 0.25, unit: 'mi' },
    ],
  },
  plausible: { min: { number: 10, unit: 'ft' }, max: { number: 50, unit: 'mi' } },
  beside: ['grading-time'],
});
