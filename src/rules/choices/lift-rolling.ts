import { choice, commonPractice } from '../shapes.ts';

export default choice({
  id: 'lift-rolling',
  title: 'rolling of the lifts',
  because: 'The roller reaches only the lift under it.',
  sources: [commonPractice],
  question: { text: 'Is each lift rolled before the next goes on?', ease: 1 },
  options: [
    {
      id: 'at-the-end',
      title: 'several lifts rolled together',
      cues: [
        'roll both|two|all|three+lift',
        'roll both|all together|once',
        'roll once+end|finish|top',
        'without roll lift',
        'not roll lift|first|between|each',
        'skip roll',
        'next|second|another+lift before roll',
      ],
    },
    { id: 'each', title: 'each lift rolled before the next', cues: ['roll each|every+lift -not -skip', 'roll between+lift -not -skip', 'roll between lift -not -skip'] },
  ],
});
