import mixGradation from '../choices/mix-gradation.ts';
import mixKind from '../choices/mix-kind.ts';
import liftMaxDense from '../quantities/lift-max-dense.ts';
import liftThickness from '../quantities/lift-thickness.ts';
import { limit } from '../shapes.ts';
import { liftToStone } from '../sources-craft.ts';

export default limit({
  id: 'lift-max-8x',
  title: 'thickest lift of a coarse-graded hot mix',
  on: liftThickness,
  max: liftMaxDense,
  when: [
    { choice: mixKind, is: ['hot'] },
    { choice: mixGradation, is: ['coarse'] },
  ],
  besideRule: 'lift-max',
  breaks: 'caution',
  because: 'Even stone that braces itself packs on top and stays open below when it lies too deep.',
  sources: [liftToStone],
  text: {
    ok: '{on} is within the {limit}, eight times the nominal size, for a coarse-graded hot mix.',
    caution:
      '{on} is over the {limit}, eight times the nominal size, for a coarse-graded hot mix: it may stay open below.',
    cannotTell:
      'For a dense hot mix, tell me its nominal size and whether it is fine- or coarse-graded, and I can check whether the lift is too thick for it.',
  },
  fix: 'Split it into thinner lifts or take a larger mix.',
  examples: {
    holds: {
      'lift-thickness': [1, 'in'],
      'mix-nominal-size': [4.75, 'mm'],
      'mix-kind': 'hot',
      'mix-gradation': 'coarse',
    },
    boundary: {
      'lift-thickness': [38, 'mm'],
      'mix-nominal-size': [4.75, 'mm'],
      'mix-kind': 'hot',
      'mix-gradation': 'coarse',
    },
    breaks: {
      'lift-thickness': [2, 'in'],
      'mix-nominal-size': [4.75, 'mm'],
      'mix-kind': 'hot',
      'mix-gradation': 'coarse',
    },
    cannotTell: { 'lift-thickness': [1, 'in'], 'mix-kind': 'hot' },
  },
});
