import { geometry, quantity } from '../shapes.ts';
import { bladeSpreading } from '../sources-craft.ts';

export default quantity({
  id: 'windrow-mass-per-100ft',
  title: 'mix in 100 ft of row',
  dimension: 'mass',
  units: { us: 'ton', metric: 't' },
  rounding: { us: 'tenth', metric: 'tenth' },
  because: 'Tickets weigh what a tape cannot: a row is right when the tons in every 100 ft are right.',
  sources: [geometry, bladeSpreading('blade spreading: control and measure the volume in the windrow')],
  cues: [
    'ton 100|hundred feet|windrow',
    'ton windrow',
    'how-many windrow foot|feet',
    'windrow weigh|hold',
    'ton windrow #length',
    'how-many+ton windrow',
  ],
  roles: { after: ['windrow'], before: ['windrow'] },
  setting: ['windrow'],
  bare: false,
  asks: 'How many tons in 100 ft of row?',
  beside: ['windrow-section'],
  usedAt: ['windrow'],
});
