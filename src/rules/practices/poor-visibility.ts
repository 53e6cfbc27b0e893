import visibility from '../choices/visibility.ts';
import { commonPractice, practice } from '../shapes.ts';

export default practice({
  id: 'poor-visibility',
  title: 'no work that drivers cannot see',
  on: visibility,
  because: 'Every distance of the layout takes for granted that the driver sees the sign, the flagger and the queue.',
  sources: [commonPractice],
  cues: [
    'fog',
    'foggy',
    'fog work|keep|stop|lay',
    'sun eye',
    'glare driver|traffic',
    'unseen road|car|driver -spotter -flagger',
  ],
  judged: {
    poor: {
      status: 'stop',
      text: 'When drivers cannot see the signs and the flagger in time, laying stops: roll what is down, then hold traffic or open.',
    },
    clear: { status: 'ok', text: 'Signs, flagger and queue are seen.' },
  },
  cannotTell: 'Laying stops when drivers cannot see the signs and the flagger in time. Tell me how far they can see.',
  fix: 'Stop laying, roll what is down, and ask the person in charge: hold, or take the closure up.',
});
