import { commonPractice, quantity } from '../shapes.ts';

export default quantity({
  id: 'base-temperature',
  title: 'temperature under the hot lift',
  dimension: 'temperature',
  units: { us: 'degF', metric: 'degC' },
  rounding: { us: 'whole', metric: 'whole' },
  because: 'What lies under it cools a thin lift faster than the air above.',
  sources: [commonPractice],
  roles: { after: ['base', 'underneath', 'under'], before: ['base', 'under', 'on'] },
  bare: { us: 'degF', metric: 'degC' },
  question: {
    text: 'How warm is the road under the lift?',
    ease: 2,
    choices: [
      { number: 50, unit: 'degF' },
      { number: 60, unit: 'degF' },
      { number: 80, unit: 'degF' },
    ],
  },
  plausible: { min: { number: -20, unit: 'degF' }, max: { number: 150, unit: 'degF' } },
  beside: ['time-to-roll'],
  usedAt: ['first-lift'],
});
