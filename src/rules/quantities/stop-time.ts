import { commonPractice, quantity } from '../shapes.ts';

export default quantity({
  id: 'stop-time',
  title: 'time traffic is held',
  dimension: 'time',
  units: { us: 'min', metric: 'min' },
  rounding: { us: 'whole', metric: 'whole' },
  because: 'From the first car stopped to the release.',
  sources: [commonPractice],
  roles: { after: ['stop', 'hold', 'delay', 'wait'], before: ['stop', 'stopped', 'hold', 'held', 'delay', 'wait'] },
  setting: ['hold', 'held', 'stop', 'stopped', 'delay', 'queue'],
  bare: { us: 'min', metric: 'min' },
  question: {
    text: 'How long is traffic held?',
    ease: 2,
    choices: [
      { number: 3, unit: 'min' },
      { number: 5, unit: 'min' },
      { number: 10, unit: 'min' },
    ],
  },
  plausible: { min: { number: 0.1, unit: 'min' }, max: { number: 12, unit: 'h' } },
});
