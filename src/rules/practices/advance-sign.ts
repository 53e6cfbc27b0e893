import signs from '../choices/advance-signs.ts';
import { manual } from '../manual.ts';
import { practice } from '../shapes.ts';

export default practice({
  id: 'advance-sign',
  title: 'advance signs before a flagger or a taper',
  on: signs,
  because: 'A driver who has read nothing meets the flagger, the taper and the queue unready.',
  sources: [manual('section 6D.06, a standard')],
  cues: ['no+sign flagger|advance|warn @check', 'need|without advance|warn sign @check', 'flag without sign', 'skip advance|warn sign'],
  judged: {
    missing: { status: 'stop', text: 'An advance warning sign shall stand before a flagger station, emergencies apart: nobody flags or works without.' },
    out: { status: 'ok', text: 'Advance signs are out, as the manual has it (shall) before a flagger station.' },
  },
  cannotTell: 'Tell me whether the advance warning signs are out.',
  fix: 'Set the signs, farthest first, before anyone flags, closes a lane or works.',
});
