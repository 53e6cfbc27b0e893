import { choice } from '../shapes.ts';
import { liftToStone } from '../sources-craft.ts';

export default choice({
  id: 'mix-gradation',
  title: 'gradation of the mix',
  because: 'In a coarse-graded mix stone rests on stone and needs more room to pack than in one held apart by sand.',
  sources: [liftToStone],
  question: { text: 'Is the mix fine-graded or coarse-graded? The mix design says.', ease: 4 },
  options: [
    { id: 'fine', title: 'fine-graded', cues: ['fine-graded'] },
    { id: 'coarse', title: 'coarse-graded', cues: ['coarse-graded', 'stone+matrix', 'sma'] },
  ],
});
