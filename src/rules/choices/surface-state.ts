import { choice, commonPractice } from '../shapes.ts';

export default choice({
  id: 'surface-state',
  title: 'state of the surface',
  because: 'Tack sticks to what it touches: dust, mud and water come off with it.',
  sources: [commonPractice],
  question: { text: 'Is the surface clean and dry, damp, wet, dusty, muddy or frosty?', ease: 1 },
  options: [
    {
      id: 'wet',
      title: 'standing water',
      cues: [
        'standing+water tack|spray|shoot|shot',
        'puddle tack|spray|shoot|shot -no',
        'wet surface|road|pavement tack|spray|shoot|shot -not+wet',
        'water on+road|surface|pavement tack|spray|shoot|shot',
        'soak tack|spray|shoot|shot',
        'wet|puddle|standing|soaked tack|spray|surface|road|pavement -no -not',
      ],
    },
    { id: 'frosty', title: 'frost', cues: ['frost|frozen|ice|icy tack|spray|shoot|shot', 'frost on -law'] },
    { id: 'muddy', title: 'mud', cues: ['mud|muddy|clay tack|spray|surface|shoot|shot'] },
    {
      id: 'dusty',
      title: 'dust',
      cues: [
        'nobody|never|without|no swept|sweep|broom tack|spray|shoot|shot|it',
        'dusty|dust|dirty tack|spray|surface|shoot|shot -driven',
        'not+swept|sweep tack|spray|shoot|shot',
        'without+sweep',
        'dirt|dirty|dust|dusty -gravel -edge -shoulder -to',
        'not+sweep|swept|broom|broomed',
      ],
    },
    { id: 'damp', title: 'damp', cues: ['damp', 'moist', 'dew'] },
    {
      id: 'clean-dry',
      title: 'clean and dry',
      cues: [
        'dry broom|broomed|clean -not -no',
        'broom|broomed+off dry -not',
        'clean+dry',
        'swept dry',
        'clean dry surface|road|tack',
      ],
    },
  ],
});
