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
        'standing+water tack|spray',
        'puddle tack|spray|shoot',
        'wet surface|road|pavement tack|spray',
        'water on+road|surface|pavement tack|spray',
        'soak tack|spray',
      ],
    },
    { id: 'frosty', title: 'frost', cues: ['frost|frozen|ice|icy tack|spray', 'frost on'] },
    { id: 'muddy', title: 'mud', cues: ['mud|muddy|clay tack|spray|surface'] },
    {
      id: 'dusty',
      title: 'dust',
      cues: ['dusty|dust|dirty tack|spray|surface -driven', 'not+swept|sweep tack|spray', 'without+sweep'],
    },
    { id: 'damp', title: 'damp', cues: ['damp', 'moist', 'dew'] },
    { id: 'clean-dry', title: 'clean and dry', cues: ['clean+dry', 'swept dry', 'clean dry surface|road|tack'] },
  ],
});
