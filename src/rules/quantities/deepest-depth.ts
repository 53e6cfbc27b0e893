import { quantity } from '../shapes.ts';
import { ufcRepair } from '../sources-craft.ts';

export default quantity({
  id: 'deepest-depth',
  title: 'deepest spot',
  dimension: 'length',
  units: { us: 'in', metric: 'mm' },
  rounding: { us: 'eighths', metric: 'whole' },
  because:
    'Lows are filled first in level lifts, each rolled, so the deepest spot sets how many there are; the average says nothing of it.',
  sources: [ufcRepair('ch. 7, p. 40')],
  roles: { after: ['middle', 'center', 'deepest', 'worst'], before: ['deepest', 'worst'] },
  bare: { us: 'in', metric: 'mm' },
  question: {
    text: 'How deep is it at the deepest spot?',
    ease: 1,
    choices: [
      { number: 1, unit: 'in' },
      { number: 2, unit: 'in' },
      { number: 3, unit: 'in' },
    ],
  },
  plausible: { min: { number: 0.2, unit: 'in' }, max: { number: 24, unit: 'in' } },
  caution: 'Depths are read with the lane protected, never alone, and never with a straightedge in live traffic.',
});
