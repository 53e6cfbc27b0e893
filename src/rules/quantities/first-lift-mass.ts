import { geometry, quantity } from '../shapes.ts';

export default quantity({
  id: 'first-lift-mass',
  title: 'mix for the first lift of a dished patch',
  dimension: 'mass',
  units: { us: 'ton', metric: 't' },
  rounding: { us: 'tenth', metric: 'tenth' },
  because:
    'A dish is narrow at the bottom, so the first level lift takes the least; an equal row would overfill it and starve the finish.',
  sources: [geometry],
  cues: ['ton|mix first+lift dished|dish|bowl|sag|rut'],
  bare: false,
  asks: 'Dished patch: tons in the first lift?',
});
