import { commonPractice, quantity } from '../shapes.ts';

export default quantity({
  id: 'truck-tare',
  title: 'truck, empty',
  dimension: 'mass',
  units: { us: 'ton', metric: 't' },
  rounding: { us: 'tenth', metric: 'tenth' },
  because: 'The truck weighs on the road before any mix is in it; the scale ticket prints it.',
  sources: [commonPractice],
  roles: { after: ['empty', 'tare'], before: ['empty', 'tare'] },
  setting: ['empty', 'tare'],
  bare: false,
  bareTold: { us: 'ton', metric: 't' },
  question: {
    text: 'What does the truck weigh empty?',
    ease: 7,
    choices: [
      { number: 8, unit: 'ton' },
      { number: 12, unit: 'ton' },
      { number: 15, unit: 'ton' },
    ],
  },
  plausible: { min: { number: 1, unit: 'ton' }, max: { number: 40, unit: 'ton' } },
});
