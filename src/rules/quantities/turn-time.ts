import { commonPractice, quantity } from '../shapes.ts';

export default quantity({
  id: 'turn-time',
  title: 'time of one turn',
  dimension: 'time',
  units: { us: 'min', metric: 'min' },
  rounding: { us: 'tenth', metric: 'tenth' },
  because: 'On a short patch turning takes as long as laying: half a minute is quick, a minute is common.',
  sources: [commonPractice],
  roles: { after: ['turn'], before: ['turn'] },
  setting: ['turn'],
  bare: false,
  plausible: { min: { number: 5, unit: 's' }, max: { number: 15, unit: 'min' } },
  question: {
    text: 'How long does a turn take?',
    ease: 4,
    choices: [
      { number: 0.5, unit: 'min' },
      { number: 1, unit: 'min' },
    ],
  },
  beside: ['grading-time'],
});
