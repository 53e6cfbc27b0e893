import station from '../choices/night-station.ts';
import { manual } from '../manual.ts';
import { practice } from '../shapes.ts';

export default practice({
  id: 'night-lighting',
  title: 'lighting at night',
  on: station,
  because: 'Headlights show a flagger in time only where he is lit; drivers are faster, drowsier and more often drunk.',
  sources: [manual('sections 6D.06, 6F.01 and 6N.18')],
  cues: [
    'night must lit|light',
    'sign|flagger|station must|need lit|light',
    'night work @check -cone -device',
    'night flag|flagger',
    'light flagger night',
    'light need night',
    'night light how-many|what',
    'dark|night light',
    'no|without+light',
    'sun down|set work|keep|go',
    'night work light',
  ],
  judged: {
    unlit: {
      status: 'stop',
      text: 'A flagger station shall be lit at night, emergencies apart; street lights, headlights and strobes do not count.',
    },
    lit: {
      status: 'ok',
      text: 'The stations are lit, as they shall be. Signs shall be retroreflective or lit, cones tall and banded, and flaggers should wear Class 3; over an hour at night is intermediate-term work and needs the agency.',
    },
    day: { status: 'ok', text: 'By day no lighting is asked for.' },
  },
  cannotTell:
    'After dark every flagger station shall be lit, signs shall be retroreflective or lit, and flaggers should wear Class 3; it needs the agency’s leave. Tell me whether the stations are lit.',
  fix: 'Light every station without glare in drivers’ eyes, or stop before dark.',
});
