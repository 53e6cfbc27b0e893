import { manual } from '../manual.ts';
import { quantity } from '../shapes.ts';

export default quantity({
  id: 'buffer-length',
  title: 'buffer space',
  dimension: 'length',
  units: { us: 'ft', metric: 'm' },
  rounding: { us: 'up', metric: 'up' },
  because: 'A driver who has missed the taper gets the distance it takes to see, brake and stop before anyone is hit.',
  sources: [manual('Table 6B-2 and section 6B.06')],
  cues: [
    'flagger where|distance|how-far stand|go|put|be|station|post|ahead|out|distance #speed|#number -sign -cone -#length -how-many',
    'buffer',
    'how+long buffer',
    'stop|stopping+sight',
    'sight+distance',
    'how-far flagger work|crew|patch -apart -cone -device',
  ],
  alsoCalled: ['longitudinal buffer', 'stopping sight distance'],
  bare: false,
  asks: 'How long a buffer?',
  beside: ['merging-taper', 'sign-spacing-a'],
  usedAt: ['traffic-control-up'],
  note: 'The manual lets this distance be used for the buffer; leaving the buffer out is for the person in charge to decide, never for want of thought. Trucks, gravel, wet tack and ice need more. A flagger wants to be seen from as far.',
  caution: 'Nothing stands in the buffer: no people, no machines, no material, no turning.',
});
