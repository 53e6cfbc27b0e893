import { geometry, quantity } from '../shapes.ts';

export default quantity({
  id: 'last-lift-mass',
  title: 'mix for the last lift of a dished patch',
  dimension: 'mass',
  units: { us: 'ton', metric: 't' },
  rounding: { us: 'tenth', metric: 'tenth' },
  because: 'A dish is widest at the top, so the last level lift takes the most.',
  sources: [geometry],
  cues: ['ton|mix last|finish|top+lift dished|dish|bowl|sag|rut'],
  bare: false,
  asks: 'Dished patch: tons in the last lift?',
});
