import { manual } from '../manual.ts';
import { quantity } from '../shapes.ts';

export default quantity({
  id: 'shoulder-taper',
  title: 'shoulder taper',
  dimension: 'length',
  units: { us: 'ft', metric: 'm' },
  rounding: { us: 'up', metric: 'up' },
  because:
    'Nobody should be driving there, so a third of the merging length will do; a shoulder that carries traffic takes the full taper.',
  sources: [manual('Table 6B-3')],
  cues: ['shoulder taper -cone -device'],
  bare: false,
  plausible: { min: { number: 15, unit: 'ft' }, max: { number: 3000, unit: 'ft' } },
  asks: 'How long a shoulder taper?',
  beside: ['merging-taper', 'device-spacing-taper'],
  usedAt: ['traffic-control-up'],
  note: 'Where the shoulder is used as a travel lane, use a merging or shifting taper.',
  caution: 'Cones do not stop cars: the approved plan and the person in charge of traffic control come first.',
});
