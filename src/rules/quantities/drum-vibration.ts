import { quantity } from '../shapes.ts';
import { pavingHandbook } from '../sources-craft.ts';

export default quantity({
  id: 'drum-vibration',
  title: 'blows of the drum in a minute',
  dimension: 'count',
  units: { us: '1', metric: '1' },
  rounding: { us: 'whole', metric: 'whole' },
  because: 'A vibrating drum strikes at a set rate whatever its speed.',
  sources: [pavingHandbook('section 18')],
  roles: { after: ['vpm', 'vibration', 'blow', 'beat'], before: ['vibration', 'frequency'] },
  setting: ['vpm', 'vibration', 'blow', 'beat', 'vibrate'],
  question: {
    text: 'How many vibrations a minute?',
    ease: 4,
    choices: [
      { number: 2400, unit: '1' },
      { number: 3600, unit: '1' },
    ],
  },
  plausible: { min: { number: 600, unit: '1' }, max: { number: 6000, unit: '1' } },
  beside: ['impacts-per-foot'],
  enough: 'the-same',
});
