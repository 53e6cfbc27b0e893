import liftRolling from '../choices/lift-rolling.ts';
import { practice } from '../shapes.ts';
import { bladeSpreading } from '../sources-craft.ts';

export default practice({
  id: 'roll-each-lift',
  title: 'every lift rolled before the next',
  on: liftRolling,
  because:
    'Grader tires pack the fresh mat in two tracks only; laid over unrolled, those tracks come through as ridges and the rest stays loose below.',
  sources: [bladeSpreading('spreading of cold mix by blade: each layer rolled almost at once')],
  cues: [
    'lift roll|rolled all+together|both+together @check',
    'lift queue|stack roll|rolled together|all|once @check',
    'roll|rolled one|#number time|once last|end|top lift @check',
    '@check roll|rolled|roller each|every|both|between lift',
    'skip roll',
    '@check roll first+lift before|second|next',
    'lift without roll',
    'roll|rolled both|all+lift',
    '@check roll|rolled lift before next',
    'why roll each|every|between',
    '@check lay|put lift before roll',
    'stack lift|both|all roll|rolled',
    'all|both+lift roll|rolled once|end|done',
    'stack|pile|lay|put all|both|two|three lift roll|rolled|roller once|last|end|done|after|top',
    'roll|rolled once last|end|final|top|after lift @check',
  ],
  judged: {
    each: { status: 'ok', text: 'Each lift is rolled before the next one goes on.' },
    'at-the-end': {
      status: 'stop',
      text: 'A lift that is not rolled stays loose under the next one, and the grader tracks show through.',
    },
  },
  cannotTell: 'Tell me whether each lift is rolled before the next one goes on.',
  fix: 'Roll each lift, low edge first, before any mix goes on it.',
});
