import { choice, commonPractice } from '../shapes.ts';

export default choice({
  id: 'patch-ends',
  title: 'ends of the patch',
  because: 'An end that runs out to nothing holds half the mix of one at full depth.',
  sources: [commonPractice],
  options: [
    { id: 'feathered', title: 'feathered', cues: ['feather -edge -side'] },
    { id: 'square', title: 'cut square', cues: ['butt+joint', 'square+end'] },
  ],
});
