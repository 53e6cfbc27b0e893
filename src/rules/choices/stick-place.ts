import { choice, commonPractice } from '../shapes.ts';

export default choice({
  id: 'stick-place',
  title: 'what it sticks to',
  because: 'Mix sticks to a dry or dirty drum; tack that has not broken sticks to tires.',
  sources: [commonPractice],
  question: { text: 'Is mix sticking to the drum, or tack to the tires?', ease: 1 },
  options: [
    { id: 'drum', title: 'mix to the drum', cues: ['mix drum stick|stuck', 'stick drum', 'mix+drum'] },
    { id: 'tires', title: 'tack to the tires', cues: ['tack tire|wheel|boot|shoe', 'stick tire'] },
  ],
});
