import { manual } from '../manual.ts';
import { quantity } from '../shapes.ts';

export default quantity({
  id: 'sign-spacing-a',
  title: 'nearest sign',
  dimension: 'length',
  units: { us: 'ft', metric: 'm' },
  rounding: { us: 'whole', metric: 'up' },
  because:
    'From where the road narrows, the taper or the flagger, to the first warning sign: room to see and slow after reading it.',
  sources: [manual('Table 6B-1')],
  cues: [
    'sign how-far apart|out',
    'sign+spacing',
    'sign spacing|distance|apart',
    'how-far|where sign',
    'how-far out sign',
    'how-far sign go',
    'first|nearest sign how-far|where',
    'advance sign',
    'sign #speed -@check -height -high -tall -taper -buffer -cone -device -zone -sign+sign',
    'sign urban|rural|expressway|street|residential -@check -height -high -tall -zone -sign+sign',
    'where|far sign put|place|set|go',
  ],
  alsoCalled: ['first sign', 'distance A'],
  bare: false,
  asks: 'How far out do the warning signs go?',
  beside: ['sign-spacing-b', 'sign-spacing-c', 'sign-nearest-least', 'sign-nearest-most'],
  usedAt: ['traffic-control-up'],
  note: 'Recommended least distances, adjusted to the field: farther for sight and reaction, nearer only to catch traffic that turns in.',
  caution: 'A plan, an agency drawing or a permit overrides this table.',
});
