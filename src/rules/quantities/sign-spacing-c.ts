import { manual } from '../manual.ts';
import { quantity } from '../shapes.ts';

export default quantity({
  id: 'sign-spacing-c',
  title: 'farthest sign, beyond the middle one',
  dimension: 'length',
  units: { us: 'ft', metric: 'm' },
  rounding: { us: 'whole', metric: 'up' },
  because: 'From the second sign to the farthest, which a driver meets first and which has to wake him.',
  sources: [manual('Table 6B-1')],
  cues: ['farthest|third sign how-far|where|distance|spacing'],
  alsoCalled: ['third sign', 'distance C'],
  bare: false,
  asks: 'How far to the farthest sign?',
  beside: ['sign-spacing-a', 'sign-spacing-b'],
  usedAt: ['traffic-control-up'],
  note: 'Recommended least distances, adjusted to the field: farther for sight and reaction, nearer only to catch traffic that turns in.',
  caution: 'A plan, an agency drawing or a permit overrides this table.',
});
