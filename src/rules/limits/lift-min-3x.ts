import mixGradation from '../choices/mix-gradation.ts';
import mixKind from '../choices/mix-kind.ts';
import liftMinDense from '../quantities/lift-min-dense.ts';
import liftThickness from '../quantities/lift-thickness.ts';
import { limit } from '../shapes.ts';
import { liftToStone, thickLifts } from '../sources-craft.ts';

export default limit({
  id: 'lift-min-3x',
  title: 'lift of a fine-graded hot mix',
  on: liftThickness,
  min: liftMinDense,
  when: [
    { choice: mixKind, is: ['hot'] },
    { choice: mixGradation, is: ['fine'] },
  ],
  besideRule: 'lift-min',
  breaks: 'caution',
  because: 'Stones that lock against each other before the air is out leave a mat that lets water in.',
  sources: [thickLifts('lift thickness by nominal size'), liftToStone],
  text: {
    ok: '{on} is at least the {limit}, three times the nominal size, that a fine-graded hot mix needs for density.',
    caution: '{on} is under the {limit}, three times the nominal size, that a fine-graded hot mix needs for density.',
    cannotTell:
      'For a dense hot mix, tell me its nominal size and whether it is fine- or coarse-graded, and I can check the lift for density.',
  },
  fix: 'Take a smaller mix, or a thicker lift where the agency allows it.',
  examples: {
    holds: {
      'lift-thickness': [1, 'in'],
      'mix-nominal-size': [4.75, 'mm'],
      'mix-kind': 'hot',
      'mix-gradation': 'fine',
    },
    boundary: {
      'lift-thickness': [1.125, 'in'],
      'mix-nominal-size': [0.375, 'in'],
      'mix-kind': 'hot',
      'mix-gradation': 'fine',
    },
    breaks: {
      'lift-thickness': [1, 'in'],
      'mix-nominal-size': [9.5, 'mm'],
      'mix-kind': 'hot',
      'mix-gradation': 'fine',
    },
    cannotTell: { 'lift-thickness': [1, 'in'], 'mix-nominal-size': [9.5, 'mm'] },
    also: [
      {
        facts: { 'lift-thickness': [1, 'in'], 'mix-nominal-size': [9.5, 'mm'], 'mix-kind': 'cold' },
        is: 'not-applicable',
      },
      { facts: { 'lift-thickness': [1, 'in'], 'mix-kind': 'hot', 'mix-gradation': 'fine' }, is: 'cannot-tell' },
    ],
  },
});
