import { geometry, quantity } from '../shapes.ts';

export default quantity({
  id: 'tack-mass',
  title: 'tack by weight',
  dimension: 'mass',
  units: { us: 'ton', metric: 't' },
  rounding: { us: 'hundredth', metric: 'hundredth' },
  because: 'Suppliers bill tack by the ton as often as by the gallon.',
  sources: [geometry],
  cues: ['how-many+ton tack', 'tack weigh', 'gallon ton tack'],
  roles: { after: ['tack'] },
  setting: ['tack'],
  bare: false,
  beside: ['tack-volume', 'tack-weight'],
});
