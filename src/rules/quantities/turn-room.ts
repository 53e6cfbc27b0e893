import { commonPractice, quantity } from '../shapes.ts';

export default quantity({
  id: 'turn-room',
  title: 'room past each end to turn',
  dimension: 'length',
  units: { us: 'ft', metric: 'm' },
  rounding: { us: 'whole', metric: 'tenth' },
  because:
    'A grader is about 30 ft long and runs out 5 to 10 ft past the patch; the roller and a waiting truck stand there too.',
  sources: [commonPractice],
  roles: { after: ['turn'], before: ['turn'] },
  setting: ['turn'],
  bare: false,
  default: { number: 50, unit: 'ft' },
  plausible: { min: { number: 1, unit: 'ft' }, max: { number: 500, unit: 'ft' } },
});
