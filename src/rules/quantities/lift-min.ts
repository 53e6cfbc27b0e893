import { quantity } from '../shapes.ts';
import { bladeSpreading } from '../sources-craft.ts';

export default quantity({
  id: 'lift-min',
  title: 'thinnest lift',
  dimension: 'length',
  units: { us: 'in', metric: 'mm' },
  rounding: { us: 'eighths', metric: 'whole' },
  because:
    'A stone needs room above and below to turn flat; in a thinner lift the blade drags it and tears the mat behind it.',
  sources: [bladeSpreading('spreading of cold mix by blade')],
  cues: [
    'min|thinnest lift',
    'how+thin',
    'min thick|thickness',
    'lift stone ?min how',
    'thinnest stone|mix|lift|go',
    'min lift stone',
  ],
  bare: false,
  asks: 'How thin can the lift be?',
  beside: ['stone-size', 'lift-max'],
});
