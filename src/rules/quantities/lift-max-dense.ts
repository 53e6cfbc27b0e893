import { quantity } from '../shapes.ts';
import { liftToStone } from '../sources-craft.ts';

export default quantity({
  id: 'lift-max-dense',
  title: 'thickest lift for density of a dense hot mix',
  dimension: 'length',
  units: { us: 'in', metric: 'mm' },
  rounding: { us: 'eighths', metric: 'whole' },
  because:
    'Small stone in a thick lift has nothing to brace it: the roller shoves the top and leaves the bottom loose.',
  sources: [liftToStone],
  bare: false,
});
