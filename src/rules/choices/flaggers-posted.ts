import { iowa, manual } from '../manual.ts';
import flaggers from '../quantities/flaggers.ts';
import { choice } from '../shapes.ts';

export default choice({
  id: 'flaggers-posted',
  title: 'flaggers posted',
  because: 'Each end needs somebody who sees it and can stop it; one person can do both only while he sees both.',
  sources: [manual('section 6E.02'), iowa('Flagger training, single flagger operations')],
  options: [
    {
      id: 'one-blind',
      title: 'one flagger who cannot see both ends',
      cues: [
        'single|#number flagger curve|hill|blind|crest|unseen',
        'single|one flagger|flag unseen|hill|curve|blind',
        'one flagger curve|hill',
      ],
    },
    {
      id: 'one-sees-both',
      title: 'one flagger who sees both ends on a short, quiet stretch',
      cues: ['single|#number flagger see both|whole|all -unseen', 'single|one flagger see both|whole|all -unseen -not'],
    },
    {
      id: 'none',
      title: 'no flagger',
      cues: ['no+flagger', 'without flagger', 'skip flagger', 'no|without+flagger', 'flagger not|no need|show'],
    },
    {
      id: 'one',
      title: 'one flagger',
      cues: [
        'single+flagger',
        'flagger alone',
        'shave flagger',
        'flag alone|myself',
        'one|single+flagger',
        'flag myself|alone|self',
        'short flagger|man|guy flag',
        'only|just one flagger|guy|man flag',
      ],
      within: { cues: ['flagger'], of: flaggers, max: { number: 1, unit: '1' } },
    },
    {
      id: 'two',
      title: 'a flagger at each end',
      cues: ['flagger both|each+end', 'two+flagger', 'flagger both|each+end|side'],
      within: { cues: ['flagger'], of: flaggers, min: { number: 2, unit: '1' } },
    },
  ],
  question: { text: 'How many flaggers are posted, and can each end be seen?', ease: 1 },
});
