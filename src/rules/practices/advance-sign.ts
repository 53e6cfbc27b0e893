import signs from '../choices/advance-signs.ts';
import { manual } from '../manual.ts';
import { practice } from '../shapes.ts';

export default practice({
  id: 'advance-sign',
  title: 'advance signs before a flagger or a taper',
  underRule: 'sign-spacing',
  on: signs,
  because: 'A driver who has read nothing meets the flagger, the taper and the queue unready.',
  sources: [manual('section 6D.06, a standard')],
  cues: [
    'no+advance|warn+sign',
    'need|without advance|warn sign @check',
    'need sign before flagger|taper -pick -pull -grab',
    'need+sign before|ahead+flagger|taper',
    'flag|flagger without|before sign @check',
    'skip advance|warn sign',
  ],
  judged: {
    missing: {
      status: 'stop',
      text: 'An advance warning sign shall stand before a flagger station, emergencies apart: nobody flags or works without.',
    },
    out: { status: 'ok', text: 'Advance signs are out, as the manual has it (shall) before a flagger station.' },
  },
  cannotTell:
    'An advance warning sign shall stand before every flagger station, emergencies apart. Tell me whether the signs are out.',
  fix: 'Set the signs, farthest first, before anyone flags, closes a lane or works.',
});
