import { geometry, quantity } from '../shapes.ts';

export default quantity({
  id: 'end-taper-mass',
  title: 'mix in one end taper',
  dimension: 'mass',
  units: { us: 'ton', metric: 't' },
  rounding: { us: 'tenth', metric: 'tenth' },
  because: 'A wedge holds half of what the same length holds at full thickness.',
  sources: [geometry],
  cues: [
    'ton taper|feather|ramp',
    'mix taper|feather|ramp',
    'how-many+ton end+taper',
    'how-many+ton|mix feather|ramp',
    'ton|mix end+taper',
  ],
  bare: false,
  asks: 'How many tons in the end taper?',
  beside: ['end-taper-length'],
  usedAt: ['order-and-check'],
  note: 'One end; a patch has two.',
});
