import backing from '../choices/backing.ts';
import { practice, type Source } from '../shapes.ts';

const osha: Source = { document: '29 CFR 1926.601(b)(4)', issuer: 'OSHA', seen: 'restated' };

export default practice({
  id: 'backing-spotter',
  title: 'one spotter backs the trucks',
  on: backing,
  because:
    'A driver backing a dump truck sees nothing close behind it; the people killed are the ones he knew were there.',
  sources: [osha],
  cues: [
    'who back truck',
    'back truck spotter|alone|without',
    'spotter',
    'need spotter @check',
    'back truck nobody|no|alone|spotter',
    'back+in|up truck spotter|nobody|watch|alone @check',
    'back truck @check -road -haul',
  ],
  judged: {
    'lost-sight': { status: 'stop', text: 'Lost sight of the spotter means the truck stops.' },
    'no-spotter': {
      status: 'caution',
      text: 'With the view to the rear blocked, nobody backs unless an alarm is heard over the noise or a signaller says it is clear; with people on foot about, that is one spotter.',
    },
    spotter: {
      status: 'ok',
      text: 'One spotter in sight of the driver, one set of signals, nobody between truck and blade. Look up for wires before the bed goes up.',
    },
  },
  cannotTell:
    'One spotter, in sight of the driver, with one set of signals; lost sight means stop. Tell me who backs the trucks.',
  fix: 'Name one spotter, agree the signals, and stop whenever he is out of sight.',
});
