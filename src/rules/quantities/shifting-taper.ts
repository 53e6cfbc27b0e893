import { manual } from '../manual.ts';
import { quantity } from '../shapes.ts';

export default quantity({
  id: 'shifting-taper',
  title: 'shifting taper',
  dimension: 'length',
  units: { us: 'ft', metric: 'm' },
  rounding: { us: 'up', metric: 'up' },
  because:
    'Traffic moves over but nobody has to merge, so half the merging length will do; more helps where there is room.',
  sources: [manual('Table 6B-3')],
  cues: ['shift taper -cone -device'],
  alsoCalled: ['lane shift taper'],
  bare: false,
  plausible: { min: { number: 15, unit: 'ft' }, max: { number: 3000, unit: 'ft' } },
  asks: 'How long a shifting taper?',
  beside: ['merging-taper', 'device-spacing-taper', 'buffer-length'],
  usedAt: ['traffic-control-up'],
  caution: 'Cones do not stop cars: the approved plan and the person in charge of traffic control come first.',
});
