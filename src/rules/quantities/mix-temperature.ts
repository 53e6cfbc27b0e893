import { commonPractice, quantity } from '../shapes.ts';

export default quantity({
  id: 'mix-temperature',
  title: 'temperature of the mix behind the blade',
  dimension: 'temperature',
  units: { us: 'degF', metric: 'degC' },
  rounding: { us: 'whole', metric: 'whole' },
  because: 'Mix loses tens of degrees in the row and under the blade: what the truck had is more than the mat has.',
  sources: [commonPractice],
  roles: {
    after: ['mix', 'mat', 'blade', 'hot', 'behind', 'screed'],
    before: ['mix', 'mat', 'hot', 'at', 'temperature', 'load', 'laid', 'behind'],
  },
  bare: { us: 'degF', metric: 'degC' },
  question: {
    text: 'How hot is the mix behind the blade?',
    ease: 2,
    choices: [
      { number: 250, unit: 'degF' },
      { number: 275, unit: 'degF' },
      { number: 300, unit: 'degF' },
    ],
  },
  plausible: { min: { number: 40, unit: 'degF' }, max: { number: 375, unit: 'degF' } },
  beside: ['time-to-roll'],
  usedAt: ['spread-premix', 'first-lift'],
  note: 'A temperature taken on the truck is an upper bound.',
});
