import { quantity } from '../shapes.ts';
import { napa } from '../sources-craft.ts';

export default quantity({
  id: 'haul-time',
  title: 'time of the haul, one way',
  dimension: 'time',
  units: { us: 'min', metric: 'min' },
  rounding: { us: 'whole', metric: 'whole' },
  because: 'From the plant gate to the row, loaded.',
  sources: [napa('6.2')],
  roles: { after: ['haul', 'way', 'out', 'drive', 'ride'], before: ['haul', 'way', 'drive', 'ride'] },
  setting: ['haul', 'way', 'drive', 'ride'],
  bare: false,
  plausible: { min: { number: 1, unit: 'min' }, max: { number: 4, unit: 'h' } },
  beside: ['cycle-time'],
  usedAt: ['order-and-check'],
});
