import { quantity } from '../shapes.ts';
import { ufcFlexible } from '../sources-craft.ts';

export default quantity({
  id: 'spray-temperature-most',
  title: 'hottest the tack is sprayed',
  dimension: 'temperature',
  units: { us: 'degF', metric: 'degC' },
  rounding: { us: 'whole', metric: 'whole' },
  because: 'Hotter, an emulsion loses its water and spoils, and a cutback gives off more vapor.',
  sources: [ufcFlexible('table 3-2')],
  bare: false,
});
