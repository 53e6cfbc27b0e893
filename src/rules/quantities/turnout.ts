import { commonPractice, quantity } from '../shapes.ts';

export default quantity({
  id: 'turnout',
  title: 'mix run out past the end of the patch',
  dimension: 'length',
  units: { us: 'ft', metric: 'm' },
  rounding: { us: 'whole', metric: 'tenth' },
  because: 'Past the end the blade empties and the machine turns onto the row: the mix should be gone by there.',
  sources: [commonPractice],
  roles: { after: ['past', 'turnout', 'beyond'], before: ['turnout', 'past'] },
  setting: ['turnout', 'blade', 'grader', 'carry'],
  bare: false,
  question: {
    text: 'How far past the patch does the mix run out?',
    ease: 1,
    choices: [
      { number: 5, unit: 'ft' },
      { number: 10, unit: 'ft' },
      { number: 15, unit: 'ft' },
    ],
  },
  plausible: { min: { number: 0.5, unit: 'ft' }, max: { number: 200, unit: 'ft' } },
  usedAt: ['first-lift', 'next-lift', 'finish-lift'],
});
