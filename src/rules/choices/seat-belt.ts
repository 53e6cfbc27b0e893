import { choice } from '../shapes.ts';
import { oshaRollover } from '../sources-craft.ts';

export default choice({
  id: 'seat-belt',
  title: 'seat belt of the roller',
  because:
    'A roller that goes over with the belt on and the frame up leaves its operator alive; thrown clear, he is under it.',
  sources: [oshaRollover('19 overturns with frame and no belt: 14 dead; 5 with the belt on: none')],
  question: { text: 'Is the belt on and the roll-over frame up?', ease: 1 },
  options: [
    {
      id: 'off',
      title: 'off',
      cues: [
        'not|never|hardly|rarely|forget buckle|belt',
        'no|without buckle',
        'no|without belt',
        'belt off',
        'not belt',
        'skip belt',
        'need belt roller',
        'unbelted',
      ],
    },
    { id: 'on', title: 'on', cues: ['belt+on', 'wear belt -need', 'buckle'] },
  ],
});
