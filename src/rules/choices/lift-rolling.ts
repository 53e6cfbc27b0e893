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
        'second|next|another|2nd|third|top lift before roller|drum|roll|rolled touch|hit|get|go|run|been|reach',
        'stack|lay|put lift before roller|drum|roll|rolled',
        'roll|rolled both+lift',
        'roll|rolled+two|all|three+lift',
        'roll|rolled both|all together|once',
        'roll|rolled once+end|finish|top',
        'without roll|rolled lift',
        'not+roll|rolled lift|first|between|each',
        'skip roll',
        'next|second|another+lift before roll|rolled',
        'stack lift roll|rolled',
        'stack all|both|two|three+lift',
        'roll|rolled just|only+once lift',
        'must|need roll|rolled each|every+lift',
        'lift roll|rolled then',
        'only|just roll|rolled top|last|final+lift',
        'two|three|both|all lift then+roll',
        'roll|rolled once after|last|end|final|top',
      ],
    },
    {
      id: 'each',
      title: 'each lift rolled before the next',
      cues: [
        'roll|rolled each|every+lift -not -skip -must -need',
        'roll|rolled between+lift -not -skip',
        'roll|rolled between lift -not -skip',
      ],
    },
  ],
});
