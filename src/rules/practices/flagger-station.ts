import place from '../choices/flagger-place.ts';
import { manual } from '../manual.ts';
import { practice } from '../shapes.ts';

export default practice({
  id: 'flagger-station',
  title: 'where the flagger stands',
  on: place,
  because: 'He must be seen by the first driver in time to stop, warn the crew behind him, and have somewhere to go.',
  sources: [manual('sections 6D.05 and 6D.06')],
  cues: [
    'where flagger stand|go|put|place|station -sign -cone',
    'where flagger stand|go',
    'where stand flag',
    'flagger stand|sit @check',
    'flagger see|seen|unseen|hill|curve|crest',
    'flagger station|place',
    'flagger middle|live+lane|open+lane @check',
    'flagger standing @check',
    'flagger standing|stand lane|road|middle|truck',
    'flagger middle|live|back|shoulder|hill|curve|truck stand|standing|sit|behind|around|next|beside',
  ],
  judged: {
    'out-of-sight': {
      status: 'stop',
      text: 'The station shall be where drivers can see the flagger in time to stop; behind a crest or a curve it is not.',
    },
    'in-live-lane': {
      status: 'stop',
      text: 'A flagger stays on the shoulder or in the closed lane, and should step into the open lane only after traffic has stopped.',
    },
    'with-the-crew': {
      status: 'caution',
      text: 'A flagger should stand alone, away from other workers, vehicles and machines, far enough ahead to warn the crew.',
    },
    'no-way-out': {
      status: 'caution',
      text: 'A flagger should have an escape route picked before the first car comes.',
    },
    shoulder: {
      status: 'ok',
      text: 'On the shoulder or in the closed lane, in sight, alone, with a way out, and room for a car to stop short of the work: as the manual says.',
    },
  },
  cannotTell:
    'On the shoulder or in the closed lane, in sight, alone, with a way out, and a warning sign ahead of him. Tell me where yours stands and whether drivers see him in time to stop.',
  fix: 'Move the station, and the taper with it, back until the flagger and the queue are both seen.',
});
