import { manual } from '../manual.ts';
import { choice } from '../shapes.ts';

export default choice({
  id: 'arrow-board',
  title: 'arrow board',
  because: 'An arrow tells a driver to move over; on a two-lane road that is into the other traffic.',
  sources: [manual('sections 6N.01 and 6N.06')],
  options: [
    {
      id: 'pointing-two-lane',
      title: 'pointing on a two-lane road or beside shoulder work',
      cues: ['arrow two-lane -caution', 'arrow shoulder -caution', 'arrow flagger -caution'],
    },
    { id: 'caution-mode', title: 'in caution mode', cues: ['arrow caution'] },
    {
      id: 'at-merging-taper',
      title: 'at the merging taper of a closed lane',
      cues: ['arrow merge|multilane|lane-closure|expressway'],
    },
  ],
  question: { text: 'Is the arrow board on a multilane closure, or on a two-lane road?', ease: 1 },
});
