import { manual } from '../manual.ts';
import { quantity } from '../shapes.ts';

export default quantity({
  id: 'zone-length',
  title: 'sign to sign',
  dimension: 'length',
  units: { us: 'ft', metric: 'm' },
  rounding: { us: 'up', metric: 'up' },
  because:
    'Warning signs both ways, a taper at each end, one buffer, and the patch: what the crew has to set out and look after.',
  sources: [manual('Figure 6P-10, order of its parts', 'memory')],
  cues: [
    'how+long zone',
    'zone+length',
    'whole|total zone',
    'how+long whole|total zone',
    'sign+sign',
    'how-far outermost sign',
    'first+sign last+sign',
    'sign+sign length|how-far',
  ],
  alsoCalled: ['length of the work zone', 'outermost sign to outermost sign'],
  bare: false,
  asks: 'How long is the whole zone with flaggers?',
  beside: ['zone-length-turning', 'one-lane-length', 'buffer-length', 'sign-spacing-a'],
  usedAt: ['traffic-control-up'],
  note: 'For planning and loading the truck: it approves nothing.',
  caution: 'The approved plan and the person in charge of traffic control come first; keep machines out of the buffer.',
});
