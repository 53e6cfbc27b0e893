import { minus, times } from '../../calc/expression.ts';
import bladeOverlap from '../quantities/blade-overlap.ts';
import bladeReach from '../quantities/blade-reach.ts';
import graderEfficiency from '../quantities/grader-efficiency.ts';
import graderSpeed from '../quantities/grader-speed.ts';
import gradingAreaRate from '../quantities/grading-area-rate.ts';
import { commonPractice, relation } from '../shapes.ts';

export default relation({
  id: 'grading-area-rate',
  title: 'area bladed in an hour',
  finds: gradingAreaRate,
  by: times(graderSpeed, minus(bladeReach, bladeOverlap), graderEfficiency),
  bothWays: false,
  plan: true,
  because: 'Every strip covers the effective width less the overlap.',
  sources: [commonPractice],
  examples: [
    {
      given: {
        'grader-speed': [5, 'km/h'],
        'blade-reach': [3.2, 'm'],
        'blade-overlap': [0.3, 'm'],
        'grader-efficiency': [80, '%'],
      },
      finds: [11600, 'm2/h'],
      source: 'worked out by hand: 5,000 × 2.9 × 0.8',
    },
  ],
});
