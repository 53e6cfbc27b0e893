import { times } from '../../calc/expression.ts';
import mixGradation from '../choices/mix-gradation.ts';
import liftMinDense from '../quantities/lift-min-dense.ts';
import mixNominalSize from '../quantities/mix-nominal-size.ts';
import { relation } from '../shapes.ts';
import { liftToStone, thickLifts } from '../sources-craft.ts';

export default relation({
  id: 'lift-min-fine',
  title: 'thinnest lift of a fine-graded mix',
  finds: liftMinDense,
  by: times(3, mixNominalSize),
  when: [{ choice: mixGradation, is: ['fine'] }],
  because: 'Below that the roller cannot close the air out of a dense mix.',
  sources: [thickLifts('lift thickness by nominal size'), liftToStone],
  examples: [
    {
      given: { 'mix-nominal-size': [9.5, 'mm'], 'mix-gradation': 'fine' },
      finds: [1.12, 'in'],
      within: 0.005,
      source: '3 × 9.5 mm is 28.5 mm',
    },
  ],
});
