import { geometry, quantity } from '../shapes.ts';

export default quantity({
  id: 'load-rolling-time',
  title: 'rolling what one load covers',
  dimension: 'time',
  units: { us: 'min', metric: 'min' },
  rounding: { us: 'whole', metric: 'whole' },
  because: 'Trips times the length one load covers, at the pace of the roller.',
  sources: [geometry],
  cues: ['how+long roll|rolled load', 'roll|rolled time load'],
  roles: { after: ['roll', 'rolled'], before: ['roll', 'rolled', 'roller'] },
  setting: ['roll', 'rolled', 'roller'],
  bare: false,
  plausible: { min: { number: 0.1, unit: 'min' }, max: { number: 600, unit: 'min' } },
  asks: 'How long to roll one load?',
  beside: ['lay-time', 'roller-limited-rate'],
  usedAt: ['roll-lift'],
});
