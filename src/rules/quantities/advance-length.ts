import { manual } from '../manual.ts';
import { quantity } from '../shapes.ts';

export default quantity({
  id: 'advance-length',
  title: 'farthest sign to the taper',
  dimension: 'length',
  units: { us: 'ft', metric: 'm' },
  rounding: { us: 'whole', metric: 'up' },
  because: 'The stretch over which drivers are warned, one way.',
  sources: [manual('Table 6B-1')],
  cues: ['advance+warn area|length', 'farthest sign taper|flagger how-far'],
  roles: { before: ['farthest'] },
  bare: false,
  asks: 'Advance warning length?',
  beside: ['sign-spacing-a', 'sign-spacing-b', 'sign-spacing-c'],
  usedAt: ['traffic-control-up'],
});
