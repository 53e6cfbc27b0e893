import { times } from '../../calc/expression.ts';
import mixGradation from '../choices/mix-gradation.ts';
import liftMaxDense from '../quantities/lift-max-dense.ts';
import mixNominalSize from '../quantities/mix-nominal-size.ts';
import { relation } from '../shapes.ts';
import { liftToStone } from '../sources-craft.ts';

export default relation({
  id: 'lift-max-coarse',
  title: 'thickest lift of a coarse-graded mix',
  finds: liftMaxDense,
  by: times(8, mixNominalSize),
  when: [{ choice: mixGradation, is: ['coarse'] }],
  because: 'Stone on stone braces itself, so it may lie thicker than a fine mix before it moves.',
  sources: [liftToStone],
  examples: [
    {
      given: { 'mix-nominal-size': [4.75, 'mm'], 'mix-gradation': 'coarse' },
      finds: [1.5, 'in'],
      within: 0.005,
      source: '8 × 4.75 mm is 38 mm',
    },
  ],
});
