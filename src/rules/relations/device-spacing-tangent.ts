import { constant, over, times } from '../../calc/expression.ts';
import { manual } from '../manual.ts';
import deviceSpacingTangent from '../quantities/device-spacing-tangent.ts';
import postedSpeed from '../quantities/posted-speed.ts';
import { relation } from '../shapes.ts';

export default relation({
  id: 'device-spacing-tangent',
  title: 'two feet for each mile an hour',
  finds: deviceSpacingTangent,
  by: times(over(postedSpeed, constant(1, 'mph')), constant(2, 'ft')),
  bothWays: false,
  because: 'The line only has to be kept, not crossed to another.',
  sources: [manual('section 6K.01, paragraph 4')],
  examples: [
    {
      given: { 'posted-speed': [55, 'mph'] },
      finds: [110, 'ft'],
      source: 'MUTCD 11th ed., section 6K.01; replacement chart to the law enforcement guide (ATSSA)',
    },
  ],
});
