import { manual } from '../manual.ts';
import { choice } from '../shapes.ts';

export default choice({
  id: 'buffer-use',
  title: 'what is in the buffer',
  because: 'The buffer is where a car that went through the cones comes to a stop.',
  sources: [manual('section 6B.06, paragraph 7')],
  options: [
    {
      id: 'occupied',
      title: 'people, machines or material in it',
      cues: [
        'buffer park|parked|truck|roller|grader|mix|stockpile|store|turn|wait|stand|stage|pickup -empty -nothing',
        'use+buffer',
        'park|store|stage between|empty taper|cone',
        'buffer eat|lunch|people|person|guy|crew|sit|stand|porta|cooler|broom|cone -empty -nothing',
        'in+buffer -empty -nothing -what -long -is+nothing -how-many -#length @check',
        'buffer leave|put|keep|store -empty -nothing',
        'turn grader in+buffer',
      ],
    },
    { id: 'empty', title: 'nothing in it', cues: ['buffer empty|clear|nothing'] },
  ],
  question: { text: 'Is there anything in the buffer?', ease: 1 },
});
