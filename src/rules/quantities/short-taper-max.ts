import { manual, manual2003 } from '../manual.ts';
import { quantity } from '../shapes.ts';

export default quantity({
  id: 'short-taper-max',
  title: 'longest flagger or downstream taper',
  dimension: 'length',
  units: { us: 'ft', metric: 'm' },
  rounding: { us: 'whole', metric: 'tenth' },
  because: 'A longer one in front of a flagger looks like a lane to drive on at speed.',
  sources: [manual('Table 6B-3'), manual2003('Figure 6H-18: taper 30 m (100 ft) at most')],
  bare: false,
  default: { number: 100, unit: 'ft' },
  plausible: { min: { number: 25, unit: 'ft' }, max: { number: 500, unit: 'ft' } },
});
