import idle from '../choices/signs-idle.ts';
import { manual } from '../manual.ts';
import { practice } from '../shapes.ts';

export default practice({
  id: 'signs-true',
  title: 'signs say only what is so',
  on: idle,
  because: 'A flagger sign with no flagger teaches drivers to ignore the next one.',
  sources: [manual('section 6A.03, paragraph 4, a standard')],
  cues: [
    'leave|left sign|control lunch|break|overnight|weekend|up',
    'lunch|break sign',
    'cover sign',
    'moved|move sign back|behind',
    'sign still back|behind',
  ],
  judged: {
    'left-up': {
      status: 'caution',
      text: 'While work is stopped or has moved on, signs and devices that do not apply shall be removed or covered.',
    },
    covered: { status: 'ok', text: 'What does not apply is covered, turned or down, as it shall be.' },
  },
  cannotTell:
    'Signs and devices that do not apply shall be removed or covered. Tell me which are up and whether they are still true.',
  fix: 'Cover or turn the flagger sign when nobody flags, move far signs along, and leave somebody with a closed lane.',
});
