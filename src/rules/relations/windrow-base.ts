import { times } from '../../calc/expression.ts';
import windrowShape from '../choices/windrow-shape.ts';
import sideSlope from '../quantities/side-slope.ts';
import windrowBase from '../quantities/windrow-base.ts';
import windrowHeight from '../quantities/windrow-height.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'windrow-base',
  title: 'base of a peaked row',
  finds: windrowBase,
  by: times(2, sideSlope, windrowHeight),
  when: [{ choice: windrowShape, is: ['triangle'] }],
  plan: true,
  because: 'Both sides run out so many to one up.',
  sources: [geometry],
  examples: [
    {
      given: { 'side-slope': [1.5, '1'], 'windrow-height': [10, 'in'], 'windrow-shape': 'triangle' },
      finds: [2.5, 'ft'],
      source: 'geometry: 2 × 1.5 × 10 in',
    },
  ],
});
