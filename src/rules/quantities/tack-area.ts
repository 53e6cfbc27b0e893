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
  cues: [
    'area tack|spray|shoot|shot -how-many+gallon',
    'square|sq+yard|yd|yds|metre|meter|m|feet|foot|ft tack|spray|shoot|shot|coat -gallon -rate -#volume -#area',
    'yard|yd|yds|sy|m2|yardage tack|spray|shoot|shot|coat how-many|what -gallon -rate -#volume -#area',
  ],
  bare: false,
  beside: ['tack-volume', 'tack-coats'],
  usedAt: ['tack'],
});
