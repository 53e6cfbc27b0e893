import { manual } from '../manual.ts';
import { quantity } from '../shapes.ts';

export default quantity({
  id: 'long-taper-spacing',
  title: 'device spacing on a merging, shifting or shoulder taper',
  dimension: 'length',
  units: { us: 'ft', metric: 'm' },
  rounding: { us: 'whole', metric: 'tenth' },
  because: 'Cones must be close enough to read as one line from a car at that speed.',
  sources: [manual('section 6K.01, paragraph 4')],
  bare: false,
});
