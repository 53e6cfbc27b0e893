import { quantity } from '../shapes.ts';
import { fromMemory, pavingHandbook } from '../sources-craft.ts';

export default quantity({
  id: 'impacts-per-foot',
  title: 'blows of the drum in each foot',
  dimension: 'count',
  units: { us: '1', metric: '1' },
  rounding: { us: 'tenth', metric: 'tenth' },
  because: 'Blows too far apart leave ripples across the mat.',
  sources: [pavingHandbook('section 18'), fromMemory('at least 10 blows a foot')],
  cues: ['impact|blow foot|feet', 'how-many impact|blow'],
  asks: 'How many blows a foot?',
  beside: ['roller-speed'],
  usedAt: ['roll-lift'],
});
