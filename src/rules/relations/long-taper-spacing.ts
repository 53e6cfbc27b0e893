import { constant, over, times } from '../../calc/expression.ts';
import { manual } from '../manual.ts';
import longTaperSpacing from '../quantities/long-taper-spacing.ts';
import postedSpeed from '../quantities/posted-speed.ts';
import { relation } from '../shapes.ts';

export default relation({
  id: 'long-taper-spacing',
  title: 'a foot for each mile an hour',
  finds: longTaperSpacing,
  by: times(over(postedSpeed, constant(1, 'mph')), constant(1, 'ft')),
  bothWays: false,
  because: 'Cones must be close enough to read as one line from a car at that speed.',
  sources: [manual('section 6K.01, paragraph 4')],
  examples: [
    {
      given: { 'posted-speed': [55, 'mph'] },
      finds: [55, 'ft'],
      source: 'MUTCD 11th ed., section 6K.01; replacement chart to the law enforcement guide (ATSSA)',
    },
  ],
});
