import { times } from '../../calc/expression.ts';
import mixGradation from '../choices/mix-gradation.ts';
import liftMinDense from '../quantities/lift-min-dense.ts';
import mixNominalSize from '../quantities/mix-nominal-size.ts';
import { relation } from '../shapes.ts';
import { liftToStone, thickLifts } from '../sources-craft.ts';

export default relation({
  id: 'lift-min-coarse',
  title: 'thinnest lift of a coarse-graded mix',
  finds: liftMinDense,
  by: times(4, mixNominalSize),
  when: [{ choice: mixGradation, is: ['coarse'] }],
  because: 'Stone on stone needs more room to be worked down than stone held in sand.',
  sources: [thickLifts('lift thickness by nominal size'), liftToStone],
  examples: [
    {
      given: { 'mix-nominal-size': [12.5, 'mm'], 'mix-gradation': 'coarse' },
      finds: [1.97, 'in'],
      within: 0.005,
      source: '4 × 12.5 mm is 50 mm',
    },
  ],
});
