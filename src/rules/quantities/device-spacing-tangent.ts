import { manual } from '../manual.ts';
import { quantity } from '../shapes.ts';

export default quantity({
  id: 'device-spacing-tangent',
  title: 'device spacing along the lane',
  dimension: 'length',
  units: { us: 'ft', metric: 'm' },
  rounding: { us: 'whole', metric: 'tenth' },
  because:
    'Alongside the buffer and the work the line only has to be kept, so the devices may stand twice as far apart as on a taper.',
  sources: [manual('section 6K.01, paragraph 4')],
  cues: [
    'cone|device spacing closed lane -taper -@check',
    'cone|device spacing|apart closed+lane|tangent|lane+line -taper -@check',
    'cone|device spacing|apart|space tangent|straight|center|centerline -@check',
    'cone|device spacing|apart|space along|past|beside work|lane -@check',
    'spacing tangent -@check',
    'drum spacing|apart|space tangent|straight -@check',
    'every tangent cone|device|drum',
  ],
  bare: false,
  asks: 'How far apart are cones on the tangent?',
  beside: ['device-spacing-taper', 'device-count'],
  usedAt: ['traffic-control-up'],
});
