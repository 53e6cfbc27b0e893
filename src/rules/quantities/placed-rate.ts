import { quantity } from '../shapes.ts';
import { virginia } from '../sources-craft.ts';

export default quantity({
  id: 'placed-rate',
  title: 'yield',
  dimension: 'spread',
  units: { us: 'lb/yd2', metric: 'kg/m2' },
  rounding: { us: 'tenth', metric: 'tenth' },
  because:
    'Held against the spread rate that was meant, it shows after a few loads whether mix is going too thick or too thin.',
  sources: [virginia('ch. 9, p. 9-2')],
  cues: ['yield pound|square'],
  bare: false,
  beside: ['placed-depth'],
});
