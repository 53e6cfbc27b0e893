import { choice, commonPractice } from '../shapes.ts';

export default choice({
  id: 'chunk-look',
  title: 'look of the lumps',
  because:
    'Cold crust from a truck or a pile is black all through; what the blade tears out of the old road is gray and broken.',
  sources: [commonPractice],
  question: { text: 'Are the lumps black and shiny, or gray and broken?', ease: 1 },
  options: [
    {
      id: 'black',
      title: 'black and shiny',
      cues: ['chunk|lump|clod|ball black|shiny|cold|fresh', 'black+shiny', 'crust|crusty'],
    },
    {
      id: 'gray',
      title: 'gray and broken',
      cues: ['chunk|lump|clod|ball gray|grey|old', 'gray|grey+broken', 'blade|grader cut|dig|gouge old'],
    },
  ],
});
