import { manual } from '../manual.ts';
import width from '../quantities/open-lane-width.ts';
import { limit } from '../shapes.ts';

export default limit({
  id: 'open-lane-least',
  title: 'least lane left open',
  on: width,
  min: { number: 9, unit: 'ft' },
  breaks: 'stop',
  besideRule: 'open-lane',
  because: 'Even where only cars come, slowly, a narrower lane puts a wheel or a mirror among the crew.',
  sources: [manual('section 6N.07, an option')],
  text: {
    ok: 'Down to {limit} may do for short-term work on a slow, quiet road with no wider or longer trucks.',
    stop: '{on} left open is under {limit}, the least the manual allows anywhere: no traffic passes there.',
    cannotTell: 'Tell me how wide the lane is that traffic has left.',
  },
  fix: 'Stop traffic while the work is in the way, or move the work in.',
  examples: {
    holds: { 'open-lane-width': [9.5, 'ft'] },
    boundary: { 'open-lane-width': [9, 'ft'] },
    breaks: { 'open-lane-width': [8.5, 'ft'] },
    cannotTell: {},
  },
});
