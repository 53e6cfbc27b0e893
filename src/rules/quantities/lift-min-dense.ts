import { quantity } from '../shapes.ts';
import { liftToStone } from '../sources-craft.ts';

export default quantity({
  id: 'lift-min-dense',
  title: 'thinnest lift for density of a dense hot mix',
  dimension: 'length',
  units: { us: 'in', metric: 'mm' },
  rounding: { us: 'eighths', metric: 'whole' },
  because: 'In a thin lift the stones lock against each other and the base before the air is out, and water gets in.',
  sources: [liftToStone],
  bare: false,
});
