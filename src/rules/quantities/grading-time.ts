import { quantity } from '../shapes.ts';
import { navyBasic } from '../sources-craft.ts';

export default quantity({
  id: 'grading-time',
  title: 'blade time for laying',
  dimension: 'time',
  units: { us: 'h', metric: 'h' },
  rounding: { us: 'hundredth', metric: 'hundredth' },
  because:
    'Passes times distance over speed is the moving time; the share of the hour that is worked makes it clock time.',
  sources: [navyBasic('p. 10-15: T = P × D ÷ (S × E)')],
  cues: [
    'grader time|hour',
    'how+long grader|blade',
    'grading+time',
    'time grader|blade|grade -#temperature -hot -cold -roll',
    'how-many hour grader|blade',
    'how-far grader|blade need',
    'how-far grader need ?pass',
    'time|hour|minute pass #speed -roll -roller -drum -rolled',
    'how+long pass #speed|mile -roll -roller -drum -rolled',
    'how-far pass #speed -roll -roller -drum -rolled',
  ],
  bare: false,
  asks: 'How long will the grader take?',
  beside: ['grader-passes', 'rolling-time-total'],
  usedAt: ['first-lift'],
  note: 'Laying only: building and sizing the row, and waiting on trucks or the roller, come on top.',
});
