import { constant, over, times } from '../../calc/expression.ts';
import roadType from '../choices/road-type.ts';
import { manual } from '../manual.ts';
import postedSpeed from '../quantities/posted-speed.ts';
import sign from '../quantities/sign-nearest-least.ts';
import { relation } from '../shapes.ts';

export default relation({
  id: 'sign-nearest-least-rural',
  title: '8 ft for each mile an hour',
  finds: sign,
  by: times(over(postedSpeed, constant(1, 'mph')), constant(8, 'ft')),
  bothWays: false,
  when: [{ choice: roadType, is: ['rural'] }],
  because: 'Room to read and react grows with speed.',
  sources: [manual('section 6B.04, guidance')],
  examples: [
    {
      given: { 'posted-speed': [55, 'mph'], 'road-type': 'rural' },
      finds: [440, 'ft'],
      source: 'MUTCD 11th ed., section 6B.04: 8 × 55',
    },
  ],
});
