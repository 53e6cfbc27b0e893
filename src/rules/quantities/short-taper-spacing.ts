import { manual } from '../manual.ts';
import { quantity } from '../shapes.ts';

export default quantity({
  id: 'short-taper-spacing',
  title: 'device spacing on a flagger or downstream taper',
  dimension: 'length',
  units: { us: 'ft', metric: 'm' },
  rounding: { us: 'whole', metric: 'tenth' },
  because: 'The taper is short: at one device for each mile an hour it would be three cones and no line at all.',
  sources: [manual('section 6B.08')],
  bare: false,
  default: { number: 20, unit: 'ft' },
});
