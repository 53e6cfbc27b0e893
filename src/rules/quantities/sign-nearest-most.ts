import { manual } from '../manual.ts';
import { quantity } from '../shapes.ts';

export default quantity({
  id: 'sign-nearest-most',
  title: 'nearest sign by the text of the manual, most',
  dimension: 'length',
  units: { us: 'ft', metric: 'm' },
  rounding: { us: 'whole', metric: 'whole' },
  because: 'The text goes by speed where the table goes by road, and at high speed it asks for more than the table.',
  sources: [manual('section 6B.04, guidance')],
  bare: false,
  beside: ['sign-spacing-a', 'sign-nearest-least'],
});
