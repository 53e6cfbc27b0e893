import { commonPractice, quantity } from '../shapes.ts';

export default quantity({
  id: 'wind-speed',
  title: 'wind',
  dimension: 'speed',
  units: { us: 'mph', metric: 'km/h' },
  rounding: { us: 'whole', metric: 'whole' },
  because: 'Wind strips heat off the mat and drifts the spray.',
  sources: [commonPractice],
  roles: { after: ['wind', 'breeze'], before: ['wind', 'breeze'] },
  setting: ['wind', 'breeze', 'windy'],
  bare: { us: 'mph', metric: 'km/h' },
  default: { number: 10, unit: 'mph' },
  plausible: { min: { number: 0, unit: 'mph' }, max: { number: 60, unit: 'mph' } },
  beside: ['time-to-roll'],
  usedAt: ['first-lift', 'tack'],
});
