import { commonPractice, quantity } from '../shapes.ts';

export default quantity({
  id: 'mat-temperature',
  title: 'temperature of the finished mat',
  dimension: 'temperature',
  units: { us: 'degF', metric: 'degC' },
  rounding: { us: 'whole', metric: 'whole' },
  because: 'A warm mat still moves under a wheel.',
  sources: [commonPractice],
  roles: { after: ['finished'], before: ['finished', 'mat'] },
  setting: ['finished', 'mat', 'open', 'traffic'],
  bare: false,
  question: {
    text: 'How warm is the finished mat?',
    ease: 2,
    choices: [
      { number: 120, unit: 'degF' },
      { number: 140, unit: 'degF' },
      { number: 160, unit: 'degF' },
    ],
  },
  plausible: { min: { number: 0, unit: 'degF' }, max: { number: 350, unit: 'degF' } },
  usedAt: ['traffic-control-down'],
});
