import { manual } from '../manual.ts';
import { quantity } from '../shapes.ts';

export default quantity({
  id: 'short-taper-min',
  title: 'shortest flagger or downstream taper',
  dimension: 'length',
  units: { us: 'ft', metric: 'm' },
  rounding: { us: 'whole', metric: 'tenth' },
  because: 'Shorter than this nobody reads it as a taper.',
  sources: [manual('Table 6B-3')],
  bare: false,
  default: { number: 50, unit: 'ft' },
  plausible: { min: { number: 25, unit: 'ft' }, max: { number: 500, unit: 'ft' } },
});
