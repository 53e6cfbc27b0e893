import { manual } from '../manual.ts';
import advanceLength from '../quantities/advance-length.ts';
import queueLength from '../quantities/queue-length.ts';
import { limit } from '../shapes.ts';

export default limit({
  id: 'queue-room',
  title: 'queue inside the signs',
  on: queueLength,
  max: advanceLength,
  breaks: 'caution',
  besideRule: 'queue-end',
  because: 'Past the farthest sign nothing warns the car that comes up to the last one standing.',
  sources: [manual('section 6A.02')],
  cues: [
    'queue room|space|fit|long|far @check',
    'room queue',
    'queue|backed inside|past|beyond sign @check',
    'queue #length sign @check',
  ],
  text: {
    ok: 'A queue of {on} ends within the {limit} that the signs reach out.',
    caution: 'A queue of {on} goes past the farthest sign, {limit} out.',
    cannotTell:
      'Tell me the vehicles an hour, how long they are held and the kind of road, and I can say whether the queue passes the first sign.',
  },
  fix: 'Hold traffic for less time, or move the signs out.',
  examples: {
    holds: { 'queue-length': [420, 'ft'], 'advance-length': [1500, 'ft'] },
    boundary: { 'queue-length': [1500, 'ft'], 'advance-length': [1500, 'ft'] },
    breaks: { 'queue-length': [1600, 'ft'], 'advance-length': [1500, 'ft'] },
    cannotTell: { 'queue-length': [420, 'ft'] },
  },
});
