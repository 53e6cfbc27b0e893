import mixGradation from '../choices/mix-gradation.ts';
import mixKind from '../choices/mix-kind.ts';
import liftMaxDense from '../quantities/lift-max-dense.ts';
import liftThickness from '../quantities/lift-thickness.ts';
import { limit } from '../shapes.ts';
import { liftToStone } from '../sources-craft.ts';

export default limit({
  id: 'lift-max-6x',
  title: 'thickest lift of a fine-graded hot mix',
  on: liftThickness,
  max: liftMaxDense,
  when: [
    { choice: mixKind, is: ['hot'] },
    { choice: mixGradation, is: ['fine'] },
  ],
  besideRule: 'lift-max',
  breaks: 'caution',
  because: 'Small stone many layers deep has nothing to brace it and moves about under the drum.',
  sources: [liftToStone],
  text: {
    ok: '{on} is within the {limit}, six times the nominal size, for a fine-graded hot mix.',
    caution:
      '{on} is over the {limit}, six times the nominal size, for a fine-graded hot mix: it may move under the roller.',
    cannotTell:
      'For a dense hot mix, tell me its nominal size and whether it is fine- or coarse-graded, and I can check whether the lift is too thick for it.',
  },
  fix: 'Split it into thinner lifts or take a larger mix.',
  examples: {
    holds: {
      'lift-thickness': [1, 'in'],
      'mix-nominal-size': [4.75, 'mm'],
      'mix-kind': 'hot',
      'mix-gradation': 'fine',
    },
    boundary: {
      'lift-thickness': [28.5, 'mm'],
      'mix-nominal-size': [4.75, 'mm'],
      'mix-kind': 'hot',
      'mix-gradation': 'fine',
    },
    breaks: {
      'lift-thickness': [1.25, 'in'],
      'mix-nominal-size': [4.75, 'mm'],
      'mix-kind': 'hot',
      'mix-gradation': 'fine',
    },
    cannotTell: { 'lift-thickness': [1, 'in'] },
  },
});
