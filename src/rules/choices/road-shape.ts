import { choice } from '../shapes.ts';
import { navyBasic } from '../sources-craft.ts';

export default choice({
  id: 'road-shape',
  title: 'shape of the road',
  because: 'On a crowned road the shoulder is the low edge; on a banked curve it may be the high one.',
  sources: [navyBasic('ch. 11, rolling techniques')],
  question: { text: 'Is the road crowned here, or banked?', ease: 1 },
  default: 'crowned',
  options: [
    {
      id: 'banked',
      title: 'banked curve',
      cues: ['bank|banked', 'super|superelevated|superelevation', 'banked+curve'],
    },
    { id: 'curve', title: 'a curve, bank not said', cues: ['curve'] },
    { id: 'crowned', title: 'crowned', cues: ['crowned', 'straight+road', 'tangent'] },
  ],
});
