import mixGradation from '../choices/mix-gradation.ts';
import mixKind from '../choices/mix-kind.ts';
import liftMinDense from '../quantities/lift-min-dense.ts';
import liftThickness from '../quantities/lift-thickness.ts';
import { limit } from '../shapes.ts';
import { liftToStone, thickLifts } from '../sources-craft.ts';

export default limit({
  id: 'lift-min-4x',
  title: 'lift of a coarse-graded hot mix',
  on: liftThickness,
  min: liftMinDense,
  when: [
    { choice: mixKind, is: ['hot'] },
    { choice: mixGradation, is: ['coarse'] },
  ],
  besideRule: 'lift-min',
  breaks: 'caution',
  because: 'Stone resting on stone needs more room to be worked down, or the mat stays open and lets water in.',
  sources: [thickLifts('lift thickness by nominal size'), liftToStone],
  text: {
    ok: '{on} is at least the {limit}, four times the nominal size, that a coarse-graded hot mix needs for density.',
    caution: '{on} is under the {limit}, four times the nominal size, that a coarse-graded hot mix needs for density.',
    cannotTell:
      'For a dense hot mix, tell me its nominal size and whether it is fine- or coarse-graded, and I can check the lift for density.',
  },
  fix: 'Take a smaller mix, or a thicker lift where the agency allows it.',
  examples: {
    holds: {
      'lift-thickness': [1, 'in'],
      'mix-nominal-size': [4.75, 'mm'],
      'mix-kind': 'hot',
      'mix-gradation': 'coarse',
    },
    boundary: {
      'lift-thickness': [1.5, 'in'],
      'mix-nominal-size': [0.375, 'in'],
      'mix-kind': 'hot',
      'mix-gradation': 'coarse',
    },
    breaks: {
      'lift-thickness': [1.25, 'in'],
      'mix-nominal-size': [9.5, 'mm'],
      'mix-kind': 'hot',
      'mix-gradation': 'coarse',
    },
    cannotTell: { 'lift-thickness': [1, 'in'], 'mix-nominal-size': [9.5, 'mm'], 'mix-kind': 'hot' },
  },
});
