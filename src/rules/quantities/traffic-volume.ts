import { commonPractice, quantity } from '../shapes.ts';

export default quantity({
  id: 'traffic-volume',
  title: 'vehicles an hour, one way',
  dimension: 'count',
  units: { us: '1', metric: '1' },
  rounding: { us: 'whole', metric: 'whole' },
  because: 'Count for five minutes and take twelve times as many.',
  sources: [commonPractice],
  alsoCalled: ['cars an hour', 'traffic count'],
  roles: { after: ['car', 'vehicle', 'hour', 'vph', 'traffic', 'direction'], before: ['volume', 'traffic'] },
  setting: ['car', 'vehicle', 'traffic', 'vph', 'queue', 'backup', 'direction'],
  question: {
    text: 'How many vehicles an hour come one way?',
    ease: 3,
    choices: [
      { number: 60, unit: '1' },
      { number: 200, unit: '1' },
      { number: 400, unit: '1' },
    ],
  },
  plausible: { min: { number: 1, unit: '1' }, max: { number: 2500, unit: '1' } },
});
