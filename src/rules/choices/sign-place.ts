import { manual } from '../manual.ts';
import { choice } from '../shapes.ts';

export default choice({
  id: 'sign-place',
  title: 'where the sign stands',
  because: 'Parked cars and people hide a low sign.',
  sources: [manual('section 6F.02')],
  options: [
    { id: 'portable', title: 'on a portable stand', cues: ['portable sign', 'sign+stand'] },
    {
      id: 'parking-or-walkers',
      title: 'on a post where cars park or people walk',
      cues: ['parking|sidewalk sign', 'urban sign high', 'sign urban|sidewalk #length'],
    },
    {
      id: 'rural-post',
      title: 'on a post in the country',
      cues: ['post sign', 'rural sign high', 'sign country', 'rural sign #length high|up|off|tall|mount'],
    },
  ],
  question: {
    text: 'Is the sign on a portable stand, on a post in the country, or on a post where cars park or people walk?',
    ease: 1,
  },
});
