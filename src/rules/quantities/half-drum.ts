import { quantity } from '../shapes.ts';
import { navyBasic } from '../sources-craft.ts';

export default quantity({
  id: 'half-drum',
  title: 'half a drum',
  dimension: 'length',
  units: { us: 'in', metric: 'mm' },
  rounding: { us: 'whole', metric: 'whole' },
  because: 'Lapping by more than half a drum rolls every strip more than twice and wins nothing.',
  sources: [navyBasic('ch. 11: half the drum on loose fills')],
  bare: false,
});
