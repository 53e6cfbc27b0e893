import { commonPractice, quantity } from '../shapes.ts';

export default quantity({
  id: 'surface-temperature',
  title: 'temperature of the road surface',
  dimension: 'temperature',
  units: { us: 'degF', metric: 'degC' },
  rounding: { us: 'whole', metric: 'whole' },
  because: 'The old road takes more heat out of a thin lift than the air does.',
  sources: [commonPractice],
  roles: { after: ['ground'], before: ['surface', 'road', 'pavement', 'ground'] },
  bare: { us: 'degF', metric: 'degC' },
  question: {
    text: 'How warm is the road surface, in the shade?',
    ease: 2,
    choices: [
      { number: 45, unit: 'degF' },
      { number: 55, unit: 'degF' },
      { number: 70, unit: 'degF' },
    ],
  },
  plausible: { min: { number: -20, unit: 'degF' }, max: { number: 170, unit: 'degF' } },
  beside: ['air-temperature'],
  usedAt: ['order-and-check', 'spread-premix'],
});
