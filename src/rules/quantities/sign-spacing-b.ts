import { manual } from '../manual.ts';
import { quantity } from '../shapes.ts';

export default quantity({
  id: 'sign-spacing-b',
  title: 'middle sign, beyond the nearest',
  dimension: 'length',
  units: { us: 'ft', metric: 'm' },
  rounding: { us: 'whole', metric: 'up' },
  because: 'From the nearest sign to the next: one message at a time, read and understood before the next comes.',
  sources: [manual('Table 6B-1')],
  cues: ['middle|second sign how-far|where|distance|spacing'],
  alsoCalled: ['second sign', 'distance B'],
  bare: false,
  asks: 'How far to the middle sign?',
  beside: ['sign-spacing-a', 'sign-spacing-c'],
  usedAt: ['traffic-control-up'],
  note: 'Recommended least distances, adjusted to the field: farther for sight and reaction, nearer only to catch traffic that turns in.',
  caution: 'A plan, an agency drawing or a permit overrides this table.',
});
