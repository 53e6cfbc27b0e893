import { commonPractice, quantity } from '../shapes.ts';

export default quantity({
  id: 'rut-length',
  title: 'length of the rut',
  dimension: 'length',
  units: { us: 'ft', metric: 'm' },
  rounding: { us: 'whole', metric: 'tenth' },
  because: 'A rut runs as far as wheels brake, turn or climb in one track.',
  sources: [commonPractice],
  roles: { after: ['long', 'length', 'run', 'stretch', 'road'], before: ['length', 'long', 'distance', 'run'] },
  setting: ['rut', 'rutted'],
  bare: { us: 'ft', metric: 'm' },
  question: {
    text: 'How long is the rut?',
    ease: 1,
    choices: [
      { number: 100, unit: 'ft' },
      { number: 300, unit: 'ft' },
      { number: 500, unit: 'ft' },
    ],
  },
  plausible: { min: { number: 1, unit: 'ft' }, max: { number: 10, unit: 'mi' } },
});
