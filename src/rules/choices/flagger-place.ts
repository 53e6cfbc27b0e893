import { manual } from '../manual.ts';
import { choice } from '../shapes.ts';

export default choice({
  id: 'flagger-place',
  title: 'where the flagger stands',
  because: 'He must be seen by the first driver in time to stop, hear nothing but traffic, and have somewhere to go.',
  sources: [manual('sections 6D.05 and 6D.06')],
  options: [
    {
      id: 'out-of-sight',
      title: 'where drivers cannot see him in time to stop',
      cues: [
        'flagger unseen|blind',
        'flagger over|behind hill|crest|curve',
        'flagger hill|crest|curve|blind behind|over|around|past',
      ],
    },
    {
      id: 'in-live-lane',
      title: 'in the open lane before traffic has stopped',
      cues: [
        'flagger stand middle',
        'flagger middle lane|road',
        'flagger live|open+lane',
        'flagger standing middle',
        'flagger stand|standing in+lane|road',
        'flagger middle|live|road stand|standing|in -shoulder -of+road',
        'flagger back traffic',
      ],
    },
    {
      id: 'with-the-crew',
      title: 'with other workers, vehicles or machines',
      cues: [
        'flagger beside|near|next truck|pickup|crew|worker|machine|grader|roller',
        'flagger sit truck|pickup|car',
        'flagger stand|standing truck|crew|pickup|grader',
      ],
    },
    {
      id: 'no-way-out',
      title: 'where he has nowhere to go',
      cues: ['flagger no+escape', 'flagger trap|trapped|guardrail|wall'],
    },
    {
      id: 'shoulder',
      title: 'on the shoulder, in sight, alone, with a way out',
      cues: ['flagger stand shoulder', 'flagger on+shoulder', 'flagger shoulder -middle'],
    },
  ],
  question: { text: 'Where does the flagger stand, and can drivers see him in time to stop?', ease: 1 },
});
