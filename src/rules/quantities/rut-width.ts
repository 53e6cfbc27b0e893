import { commonPractice, quantity } from '../shapes.ts';

export default quantity({
  id: 'rut-width',
  title: 'width of the rut',
  dimension: 'length',
  units: { us: 'ft', metric: 'm' },
  rounding: { us: 'tenth', metric: 'tenth' },
  because: 'From where the straightedge touches on one side to where it touches on the other.',
  sources: [commonPractice],
  roles: { after: ['wide', 'width', 'across'], before: ['width', 'wide'] },
  setting: ['rut', 'rutted'],
  bare: { us: 'ft', metric: 'm' },
  question: {
    text: 'How wide is one rut?',
    ease: 1,
    choices: [
      { number: 2, unit: 'ft' },
      { number: 3, unit: 'ft' },
      { number: 4, unit: 'ft' },
    ],
  },
  plausible: { min: { number: 0.5, unit: 'ft' }, max: { number: 8, unit: 'ft' } },
});
