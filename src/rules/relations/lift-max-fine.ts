import { times } from '../../calc/expression.ts';
import mixGradation from '../choices/mix-gradation.ts';
import liftMaxDense from '../quantities/lift-max-dense.ts';
import mixNominalSize from '../quantities/mix-nominal-size.ts';
import { relation } from '../shapes.ts';
import { liftToStone } from '../sources-craft.ts';

export default relation({
  id: 'lift-max-fine',
  title: 'thickest lift of a fine-graded mix',
  finds: liftMaxDense,
  by: times(6, mixNominalSize),
  when: [{ choice: mixGradation, is: ['fine'] }],
  because: 'Above that the small stone has nothing to brace it and moves under the drum.',
  sources: [liftToStone],
  examples: [
    {
      given: { 'mix-nominal-size': [4.75, 'mm'], 'mix-gradation': 'fine' },
      finds: [1.12, 'in'],
      within: 0.005,
      source: '6 × 4.75 mm is 28.5 mm',
    },
  ],
});
