import { manual } from '../manual.ts';
import { quantity } from '../shapes.ts';

export default quantity({
  id: 'closure-length',
  title: 'farthest sign to the end of the closure',
  dimension: 'length',
  units: { us: 'ft', metric: 'm' },
  rounding: { us: 'up', metric: 'up' },
  because:
    'One lane of a multilane road closed: warning on one approach, a merging taper, the buffer, the work, and the taper back.',
  sources: [manual('Figure 6P-33, order of its parts', 'memory')],
  cues: ['how+long closure', 'closure+length', 'zone multilane|expressway', 'whole|total closure'],
  bare: false,
  asks: 'How long is the whole lane closure?',
  beside: ['merging-taper', 'buffer-length', 'sign-spacing-a', 'sign-spacing-b', 'sign-spacing-c'],
  usedAt: ['traffic-control-up'],
  note: 'For planning and loading the truck: it approves nothing.',
  caution: 'The approved plan and the person in charge of traffic control come first; keep machines out of the buffer.',
});
