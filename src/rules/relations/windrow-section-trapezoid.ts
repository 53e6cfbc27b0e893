import { plus, times } from '../../calc/expression.ts';
import windrowShape from '../choices/windrow-shape.ts';
import windrowBase from '../quantities/windrow-base.ts';
import windrowHeight from '../quantities/windrow-height.ts';
import windrowSection from '../quantities/windrow-section.ts';
import windrowTop from '../quantities/windrow-top.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'windrow-section-trapezoid',
  title: 'end area of a flat-topped row',
  finds: windrowSection,
  by: times(0.5, plus(windrowTop, windrowBase), windrowHeight),
  when: [{ choice: windrowShape, is: ['trapezoid'] }],
  bothWays: false,
  said: [windrowTop, windrowBase, windrowHeight],
  plan: true,
  because: 'The middle of top and base, times the height.',
  sources: [geometry],
  examples: [
    {
      given: {
        'windrow-top': [1, 'ft'],
        'windrow-base': [3, 'ft'],
        'windrow-height': [0.6, 'ft'],
        'windrow-shape': 'trapezoid',
      },
      finds: [1.2, 'ft2'],
      source: 'geometry: (1 + 3) ÷ 2 × 0.6',
    },
  ],
});
