import { manual } from '../manual.ts';
import { quantity } from '../shapes.ts';

export default quantity({
  id: 'shoulder-zone-length',
  title: 'farthest sign to the end of the shoulder work',
  dimension: 'length',
  units: { us: 'ft', metric: 'm' },
  rounding: { us: 'up', metric: 'up' },
  because: 'The shoulder closed on one side: two signs on one approach, a taper of a third, the buffer and the work.',
  sources: [manual('section 6N.06 and Figure 6P-5, order of its parts', 'memory')],
  cues: [
    'how+long zone shoulder+close|closed|shut|closure|work',
    'zone+length shoulder',
    'whole|total zone shoulder',
    'how+long shoulder+closure',
    'shoulder+closure -taper -cone -device -buffer -sign',
  ],
  bare: false,
  asks: 'How long is the zone for a closed shoulder?',
  beside: ['shoulder-taper', 'buffer-length', 'sign-spacing-a', 'sign-spacing-b'],
  usedAt: ['traffic-control-up'],
  note: 'For planning and loading the truck: it approves nothing. An arrow board beside shoulder work shows caution mode only.',
  caution: 'The approved plan and the person in charge of traffic control come first; keep machines out of the buffer.',
});
