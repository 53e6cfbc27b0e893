import { quantity } from '../shapes.ts';
import { ltpp } from '../sources-work.ts';

export default quantity({
  id: 'pothole-depth',
  title: 'depth of the pothole',
  dimension: 'length',
  units: { us: 'in', metric: 'mm' },
  rounding: { us: 'eighths', metric: 'whole' },
  because: 'Measured at the deepest, below the road round it: the deeper, the likelier that the base has gone too.',
  sources: [ltpp('potholes')],
  roles: { after: ['deep', 'depth'], before: ['depth', 'deep'] },
  setting: ['pothole', 'hole'],
  bare: { us: 'in', metric: 'mm' },
  question: {
    text: 'How deep is the pothole at its deepest?',
    ease: 1,
    choices: [
      { number: 1, unit: 'in' },
      { number: 2, unit: 'in' },
      { number: 4, unit: 'in' },
    ],
  },
  plausible: { min: { number: 0.25, unit: 'in' }, max: { number: 24, unit: 'in' } },
  caution: 'Depths are read with the lane protected, never alone, and never with a straightedge in live traffic.',
});
