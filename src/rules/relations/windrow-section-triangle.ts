import { times } from '../../calc/expression.ts';
import windrowShape from '../choices/windrow-shape.ts';
import windrowBase from '../quantities/windrow-base.ts';
import windrowHeight from '../quantities/windrow-height.ts';
import windrowSection from '../quantities/windrow-section.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'windrow-section-triangle',
  title: 'end area of a peaked row',
  finds: windrowSection,
  by: times(0.5, windrowBase, windrowHeight),
  when: [{ choice: windrowShape, is: ['triangle'] }],
  bothWays: false,
  said: [windrowBase, windrowHeight],
  plan: true,
  because: 'A triangle is half its base times its height.',
  sources: [geometry],
  examples: [
    {
      given: { 'windrow-base': [3, 'ft'], 'windrow-height': [1, 'ft'], 'windrow-shape': 'triangle' },
      finds: [1.5, 'ft2'],
      source: 'geometry',
    },
  ],
});
