import { manual } from '../manual.ts';
import { choice } from '../shapes.ts';

export default choice({
  id: 'sign-gap',
  title: 'which sign',
  because:
    'The manual counts from the work outward: its first sign is the one nearest the work, the last a driver meets.',
  sources: [manual('Table 6B-1')],
  options: [
    {
      id: 'a',
      title: 'nearest sign, from the taper or the flagger',
      cues: [
        'nearest sign',
        'sign from|before|ahead taper|flagger|work|cone -second -third',
        'closest|nearest|close sign',
      ],
    },
    { id: 'b', title: 'middle sign, from the nearest one', cues: ['middle|second+sign'] },
    { id: 'c', title: 'farthest sign, from the middle one', cues: ['farthest|third+sign'] },
  ],
  question: { text: 'Which sign is it: the nearest to the work, the middle one, or the farthest?', ease: 1 },
});
