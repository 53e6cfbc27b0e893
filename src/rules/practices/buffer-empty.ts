import use from '../choices/buffer-use.ts';
import { manual } from '../manual.ts';
import { practice } from '../shapes.ts';

export default practice({
  id: 'buffer-empty',
  title: 'nothing in the buffer',
  underRule: 'buffer-length',
  on: use,
  because: 'The buffer is where a car that went through the cones comes to a stop; whatever stands there is hit.',
  sources: [manual('section 6B.06, paragraph 7')],
  cues: [
    'buffer park|truck|roller|grader|mix|stockpile|store|turn|wait|stand|stage|pickup',
    'in+buffer @check',
    'use buffer @check',
    'buffer empty|clear',
    'park|store|stage|set|leave empty|open|clear between taper',
    'park|store|stage|leave between taper crew|work',
    'park|truck|pickup empty+stretch|space|part taper|cone',
    'in+buffer -#length -how-many -what -why',
    'buffer eat|lunch|crew|people|guy|porta',
  ],
  judged: {
    occupied: {
      status: 'stop',
      text: 'Nothing belongs in the buffer: no people, no machines, no trucks, no material, no turning.',
    },
    empty: { status: 'ok', text: 'The buffer is empty, as the manual has it (should).' },
  },
  cannotTell: 'Tell me what is in the buffer: it has to be empty.',
  fix: 'Clear it, or lengthen the work space and move taper, buffer and signs out with it.',
});
