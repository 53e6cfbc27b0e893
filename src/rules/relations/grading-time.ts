import { over, times } from '../../calc/expression.ts';
import graderEfficiency from '../quantities/grader-efficiency.ts';
import graderPasses from '../quantities/grader-passes.ts';
import graderSpeed from '../quantities/grader-speed.ts';
import gradingTime from '../quantities/grading-time.ts';
import workDistance from '../quantities/work-distance.ts';
import { relation } from '../shapes.ts';
import { navyBasic } from '../sources-craft.ts';

export default relation({
  id: 'grading-time',
  title: 'blade time on a long run',
  finds: gradingTime,
  by: over(times(graderPasses, workDistance), times(graderSpeed, graderEfficiency)),
  keeps: [graderPasses],
  plan: true,
  because: 'Turning, waiting and looking are in the share of the hour that is worked.',
  sources: [navyBasic('p. 10-15: T = P × D ÷ (S × E)')],
  note: 'Turns are in the share of the time worked; on a short patch say how long a turn takes.',
  examples: [
    {
      given: {
        'grader-passes': [6, '1'],
        'work-distance': [0.25, 'mi'],
        'grader-speed': [3, 'mph'],
        'grader-efficiency': [60, '%'],
      },
      finds: [5 / 6, 'h'],
      source: 'worked out by hand: 6 × 0.25 ÷ (3 × 0.60)',
    },
  ],
});
