import { manual } from '../manual.ts';
import { choice } from '../shapes.ts';

export default choice({
  id: 'advance-signs',
  title: 'advance warning signs',
  because: 'A driver who has read nothing meets the flagger, the taper and the queue unready.',
  sources: [manual('section 6D.06')],
  options: [
    {
      id: 'missing',
      title: 'none out',
      cues: [
        'no+advance|warn|sign flag|flagger|advance|warn',
        'without advance|warn',
        'flag|flagger without+sign',
        'skip advance|warn',
        'forgot sign',
      ],
    },
    {
      id: 'out',
      title: 'out ahead of the flagger and the taper',
      cues: ['advance|warn+sign out|up|set -no -without -not'],
    },
  ],
  question: { text: 'Are the advance warning signs out?', ease: 1 },
});
