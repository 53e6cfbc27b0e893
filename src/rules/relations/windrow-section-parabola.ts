import { over, times } from '../../calc/expression.ts';
import windrowShape from '../choices/windrow-shape.ts';
import windrowBase from '../quantities/windrow-base.ts';
import windrowHeight from '../quantities/windrow-height.ts';
import windrowSection from '../quantities/windrow-section.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'windrow-section-parabola',
  title: 'end area of a rounded row',
  finds: windrowSection,
  by: times(over(2, 3), windrowBase, windrowHeight),
  when: [{ choice: windrowShape, is: ['parabola'] }],
  bothWays: false,
  said: [windrowBase, windrowHeight],
  plan: true,
  because: 'A parabola fills two thirds of the box round it.',
  sources: [geometry],
  examples: [
    {
      given: { 'windrow-base': [3, 'ft'], 'windrow-height': [1, 'ft'], 'windrow-shape': 'parabola' },
      finds: [2, 'ft2'],
      source: 'geometry',
    },
  ],
});
