import { manual } from '../manual.ts';
import { choice } from '../shapes.ts';

export default choice({
  id: 'queue-place',
  title: 'where the queue stands',
  because: 'Nobody reads a sign with his bumper against the car ahead, and nobody can leave a crossing with one.',
  sources: [manual('section 6N.17, paragraph 1')],
  options: [
    {
      id: 'on-tracks',
      title: 'across railroad tracks',
      cues: ['queue|line|traffic|car railroad|railway', 'railroad|railway near|ahead|#length'],
    },
    {
      id: 'past-first-sign',
      title: 'past the first sign a driver meets',
      cues: ['queue|line|traffic|car past|beyond sign'],
    },
    {
      id: 'inside-signs',
      title: 'between the signs and the flagger',
      cues: ['queue|line|traffic|car before|inside sign -past'],
    },
  ],
  question: { text: 'Where does the queue end: before the first sign, past it, or on railroad tracks?', ease: 1 },
});
