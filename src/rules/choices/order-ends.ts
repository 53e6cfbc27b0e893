import { choice, commonPractice } from '../shapes.ts';

export default choice({
  id: 'order-ends',
  title: 'mix past the ends',
  because: 'Without length and width nobody can say how much lies past the ends, so it is left out and said.',
  sources: [commonPractice],
  default: 'left-out',
  options: [{ id: 'left-out', title: 'left out: give length and width to have it counted', cues: [] }],
});
