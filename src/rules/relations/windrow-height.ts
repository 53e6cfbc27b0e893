import { over, power } from '../../calc/expression.ts';
import windrowShape from '../choices/windrow-shape.ts';
import sideSlope from '../quantities/side-slope.ts';
import windrowHeight from '../quantities/windrow-height.ts';
import windrowSection from '../quantities/windrow-section.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'windrow-height',
  title: 'height of a peaked row',
  finds: windrowHeight,
  by: power(over(windrowSection, sideSlope), 0.5),
  when: [{ choice: windrowShape, is: ['triangle'] }],
  keeps: [windrowSection],
  plan: true,
  because: 'A triangle with sides so many out to one up holds slope times height squared.',
  sources: [geometry],
  examples: [
    {
      given: { 'windrow-section': [12.5 / 12, 'ft2'], 'side-slope': [1.5, '1'], 'windrow-shape': 'triangle' },
      finds: [10, 'in'],
      source: 'geometry: √(1.0417 ÷ 1.5) ft',
    },
  ],
});
