import { quantity } from '../shapes.ts';
import { armyPaving, navyAdvanced } from '../sources-craft.ts';

export default quantity({
  id: 'unit-weight',
  title: 'compacted weight',
  dimension: 'density',
  units: { us: 'lb/yd2/in', metric: 'kg/m2/mm' },
  rounding: { us: 'tenth', metric: 'hundredth' },
  because:
    'A square yard an inch thick is three quarters of a cubic foot, and rolled hot mix runs from 140 to 160 pounds a cubic foot; heavier stone weighs more.',
  sources: [navyAdvanced('p. 8-31'), armyPaving('density range of compacted mix')],
  cues: [
    'unit+weight',
    'mix weigh|weight',
    'how-many mix weigh',
    'pound yard inch',
    'what sq|square+yd|yard inch weigh|weight',
    'weigh|weight|ton yard ?mix -#length -rut -windrow -truck',
    'weigh|weight|ton|pound per cubic+yard|foot -#length -windrow',
    'density',
  ],
  roles: { after: ['density', 'weight'], before: ['at', 'density', 'weighs', 'use', 'mix'] },
  bare: false,
  shortUnit: { unit: 'lb', for: 'lb/yd2/in' },
  default: { number: 110, unit: 'lb/yd2/in', low: 105, high: 120 },
  plausible: { min: { number: 75, unit: 'lb/yd2/in' }, max: { number: 140, unit: 'lb/yd2/in' } },
  asks: 'What does the mix weigh per inch?',
  note: "The mix's own figure is better: the lab sheet, or a weighed box. Cold mix is often lighter; no published weight for it was found.",
});
