import { manual } from '../manual.ts';
import { choice } from '../shapes.ts';

export default choice({
  id: 'signs-idle',
  title: 'signs while nobody works',
  because: 'A sign that is not true teaches drivers to ignore the next one.',
  sources: [manual('section 6A.03, paragraph 4')],
  options: [
    {
      id: 'left-up',
      title: 'left showing what is not so',
      cues: [
        'sign leave|left lunch|overnight|weekend|up',
        'lunch|break sign up',
        'sign still|behind|back moved|move|#length',
      ],
    },
    { id: 'covered', title: 'covered, turned or taken down', cues: ['sign cover|turn'] },
  ],
  question: { text: 'Do the signs still say what is so?', ease: 1 },
});
