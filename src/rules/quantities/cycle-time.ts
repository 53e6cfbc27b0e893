import { quantity } from '../shapes.ts';
import { napa } from '../sources-craft.ts';

export default quantity({
  id: 'cycle-time',
  title: 'round trip of a truck',
  dimension: 'time',
  units: { us: 'min', metric: 'min' },
  rounding: { us: 'whole', metric: 'whole' },
  because: 'Load, out, wait, dump and back: the truck is not seen again until all of it is done.',
  sources: [napa('6.2')],
  cues: [
    'cycle+time',
    'truck cycle -how-many -#output',
    'round+trip -how-many -#output',
    'turnaround',
    'how+long truck trip|haul',
    'cycle -how-many -#output',
    'how+long cycle|round',
  ],
  roles: { after: ['cycle', 'round', 'trip'], before: ['cycle', 'round', 'trip'] },
  setting: ['cycle', 'round'],
  bare: { us: 'min', metric: 'min' },
  plausible: { min: { number: 3, unit: 'min' }, max: { number: 12, unit: 'h' } },
  asks: "How long is a truck's round trip?",
  beside: ['trucks-needed', 'trips-per-truck'],
  usedAt: ['order-and-check'],
});
