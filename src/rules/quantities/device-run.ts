import { commonPractice, quantity } from '../shapes.ts';

export default quantity({
  id: 'device-run',
  title: 'length the devices stand along',
  dimension: 'length',
  units: { us: 'ft', metric: 'm' },
  rounding: { us: 'whole', metric: 'tenth' },
  because: 'The buffer and the work together, where cones keep traffic out of the lane.',
  sources: [commonPractice],
  roles: { after: ['tangent', 'cone', 'line', 'straight'], before: ['along', 'tangent'] },
  setting: ['cone', 'device', 'tangent'],
  bare: false,
  question: {
    text: 'How long is the stretch that the cones stand along?',
    ease: 2,
    choices: [
      { number: 500, unit: 'ft' },
      { number: 1000, unit: 'ft' },
      { number: 1500, unit: 'ft' },
    ],
  },
  plausible: { min: { number: 5, unit: 'ft' }, max: { number: 10, unit: 'mi' } },
});
