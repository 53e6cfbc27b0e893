import { commonPractice, quantity } from '../shapes.ts';

export default quantity({
  id: 'grader-passes',
  title: 'grader passes',
  dimension: 'count',
  units: { us: '1', metric: '1' },
  rounding: { us: 'up', metric: 'up' },
  counted: true,
  because: 'As many as are really made; where nobody says, the fewest the width needs.',
  sources: [commonPractice],
  roles: { after: ['pass', 'trip', 'times', 'time'], before: ['pass', 'grader', 'forth'] },
  setting: ['grader', 'blade', 'pass', 'forth'],
  bare: { us: '1', metric: '1' },
  plausible: { min: { number: 1, unit: '1' }, max: { number: 60, unit: '1' } },
  question: {
    text: 'How many passes does the grader make?',
    ease: 2,
    choices: [
      { number: 4, unit: '1' },
      { number: 6, unit: '1' },
      { number: 8, unit: '1' },
    ],
  },
  beside: ['grading-time'],
  usedAt: ['first-lift', 'next-lift', 'finish-lift'],
});
