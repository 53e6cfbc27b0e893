import { geometry, quantity } from '../shapes.ts';

export default quantity({
  id: 'crown-wedge-mass',
  title: 'mix in the crown wedge',
  dimension: 'mass',
  units: { us: 'ton', metric: 't' },
  rounding: { us: 'tenth', metric: 'tenth' },
  because: 'Area times average depth times what the mix weighs.',
  sources: [geometry],
  cues: [
    'ton crown|wedge',
    'mix crown|wedge',
    'how-many mix restore|rebuild crown|slope',
    'how-many+ton crown|wedge',
    'ton crown+wedge',
  ],
  bare: false,
  asks: 'How many tons in the crown wedge?',
  beside: ['crown-build', 'crown-wedge-depth'],
  usedAt: ['order-and-check'],
});
