import { commonPractice, quantity } from '../shapes.ts';

export default quantity({
  id: 'air-temperature',
  title: 'air temperature',
  dimension: 'temperature',
  units: { us: 'degF', metric: 'degC' },
  rounding: { us: 'whole', metric: 'whole' },
  because: 'Cool air slows the break of tack and takes the heat out of the mat.',
  sources: [commonPractice],
  roles: {
    after: ['air', 'outside', 'degree', 'out', 'shade', 'rise', 'fall', 'drop', 'morning', 'tonight'],
    before: ['air', 'outside', 'weather', 'temperature', 'thermometer', 'gauge', 'morning'],
  },
  bare: { us: 'degF', metric: 'degC' },
  question: {
    text: 'How warm is the air?',
    ease: 1,
    choices: [
      { number: 45, unit: 'degF' },
      { number: 55, unit: 'degF' },
      { number: 70, unit: 'degF' },
    ],
  },
  plausible: { min: { number: -30, unit: 'degF' }, max: { number: 130, unit: 'degF' } },
  asks: 'Is it warm enough to lay?',
  beside: ['surface-temperature'],
  usedAt: ['order-and-check', 'tack'],
});
