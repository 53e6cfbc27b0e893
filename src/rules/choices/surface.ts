import { choice, commonPractice } from '../shapes.ts';

export default choice({
  id: 'surface',
  title: 'surface under the patch',
  because: 'A worn or cut face is rough and thirsty and takes more tack than a lift laid the same day.',
  sources: [commonPractice],
  question: { text: 'What does it go on: worn road, a fresh lift, or a cut face?', ease: 1 },
  options: [
    {
      id: 'fresh-lift',
      title: 'fresh lift',
      cues: ['fresh|new+lift|mat|mix', 'between+lift', 'between lift', 'new+asphalt|surface|pavement', 'first+lift tack'],
    },
    { id: 'cut', title: 'cut or milled face', cues: ['mill', 'cut+surface|face', 'planed', 'ground+surface'] },
    {
      id: 'worn',
      title: 'worn road',
      cues: ['worn', 'old+surface|road|pavement|mix|mat', 'exist+surface|road|pavement|mix', 'weathered', 'dried+out'],
    },
  ],
});
