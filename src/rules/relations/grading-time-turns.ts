import { over, plus, times } from '../../calc/expression.ts';
import graderPasses from '../quantities/grader-passes.ts';
import graderSpeed from '../quantities/grader-speed.ts';
import gradingTime from '../quantities/grading-time.ts';
import turnTime from '../quantities/turn-time.ts';
import workDistance from '../quantities/work-distance.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'grading-time-turns',
  title: 'blade time on a short run, turn by turn',
  finds: gradingTime,
  by: times(graderPasses, plus(over(workDistance, graderSpeed), turnTime)),
  keeps: [graderPasses, turnTime],
  said: [turnTime],
  plan: true,
  because: 'On a short run the turns take as long as the laying, so they are counted one by one.',
  sources: [geometry],
  note: 'Turns counted one by one; waiting is not in it.',
  examples: [
    {
      given: {
        'grader-passes': [6, '1'],
        'work-distance': [200, 'ft'],
        'grader-speed': [264, 'ft/min'],
        'turn-time': [0.5, 'min'],
      },
      finds: [6 * (200 / 264 + 0.5), 'min'],
      source: 'worked out by hand: 6 × (0.758 + 0.5)',
    },
  ],
});
