import { quantity } from '../shapes.ts';
import { armyPaving, navyAdvanced } from '../sources-craft.ts';

export default quantity({
  id: 'tack-area',
  title: 'area to tack',
  dimension: 'area',
  units: { us: 'yd2', metric: 'm2' },
  rounding: { us: 'whole', metric: 'whole' },
  because: 'Tack covers the pavement to be patched and no more; every coat covers it again.',
  sources: [navyAdvanced('p. 8-29: the width of the pavement only'), armyPaving('p. 18')],
  cues: ['area tack|spray|shoot|shot', 'square+yard tack|spray|shoot|shot -how-many+gallon'],
  bare: false,
  beside: ['tack-volume', 'tack-coats'],
  usedAt: ['tack'],
});
