import { californiaManual } from '../manual.ts';
import { quantity } from '../shapes.ts';

export default quantity({
  id: 'table-grade',
  title: 'downgrade column',
  dimension: 'ratio',
  units: { us: '%', metric: '%' },
  rounding: { us: 'whole', metric: 'whole' },
  because: 'Between two columns of the table the steeper one errs long; beyond the last one nothing is published.',
  sources: [californiaManual('Table 6B-2(CA)')],
  bare: false,
  plausible: { min: { number: 0, unit: '%' }, max: { number: 9, unit: '%' } },
});
