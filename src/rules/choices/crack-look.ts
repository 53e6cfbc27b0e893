import { choice } from '../shapes.ts';
import { navyBasic } from '../sources-craft.ts';

export default choice({
  id: 'crack-look',
  title: 'look of the cracks',
  because:
    'Fine cracks crosswise behind the drum come from rolling; half moons come from a mat that has slid on what is under it.',
  sources: [navyBasic('ch. 16, defects')],
  question: {
    text: 'Fine cracks across the mat right behind the roller, or half-moon cracks where wheels brake?',
    ease: 1,
  },
  options: [
    {
      id: 'half-moon',
      title: 'half-moon cracks',
      cues: ['half-moon'],
    },
    {
      id: 'fine',
      title: 'fine cracks behind the roller',
      cues: [
        'check|hairline|little|small+crack behind|after|under|roll|roller|drum',
        'crack behind+roller|drum',
        'check+crack behind|roll|roller',
      ],
    },
  ],
});
