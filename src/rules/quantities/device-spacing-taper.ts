import { manual } from '../manual.ts';
import { quantity } from '../shapes.ts';

export default quantity({
  id: 'device-spacing-taper',
  title: 'device spacing on the taper',
  dimension: 'length',
  units: { us: 'ft', metric: 'm' },
  rounding: { us: 'whole', metric: 'tenth' },
  because: 'Cones must be close enough to read as one line; a short taper needs them closer at any speed.',
  sources: [manual('section 6K.01, paragraph 4; section 6B.08')],
  cues: [
    'how-far between cone|device',
    'how-far between drum taper|tangent|mph|#speed',
    'cone|device spacing|apart|space taper -@check',
    'cone|device spacing|space',
    'how-far apart cone|device',
    'drum spacing|apart|space taper -@check',
    'how-far apart cone|device taper',
    'cone|device|drum taper every|spacing|apart|close -#length',
  ],
  bare: false,
  asks: 'How far apart do the cones go?',
  beside: ['device-spacing-tangent', 'device-count'],
  usedAt: ['traffic-control-up'],
});
