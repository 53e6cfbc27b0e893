import place from '../choices/queue-place.ts';
import { manual } from '../manual.ts';
import { practice } from '../shapes.ts';

export default practice({
  id: 'queue-end',
  title: 'where the queue may end',
  on: place,
  because:
    'The last car must meet a sign before it meets the queue, and nobody can leave a crossing with a bumper at each end.',
  sources: [manual('sections 6A.02 and 6N.17')],
  cues: [
    'queue|line|traffic|car past|beyond sign -what',
    'queue|line|traffic|car railroad|railway',
    'railroad|railway near|ahead|#length',
  ],
  judged: {
    'on-tracks': {
      status: 'stop',
      text: 'Queues shall not stand across railroad tracks: the control point moves, or a flagger or officer is at the crossing.',
    },
    'past-first-sign': {
      status: 'caution',
      text: 'The queue is past the first sign: nothing warns the car that comes up to it.',
    },
    'inside-signs': { status: 'ok', text: 'The queue ends before the first sign.' },
  },
  cannotTell: 'The queue has to end before the first sign, and never on railroad tracks. Tell me where it ends.',
  fix: 'Stop adding to it: shorten the holds, move the signs out, or put a lit vehicle upstream now. Near rails, ask the railroad.',
});
