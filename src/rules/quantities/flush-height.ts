import { quantity } from '../shapes.ts';
import { ufcRepair } from '../sources-craft.ts';

export default quantity({
  id: 'flush-height',
  title: 'height of the patch over the old road',
  dimension: 'length',
  units: { us: 'in', metric: 'mm' },
  rounding: { us: 'eighths', metric: 'whole' },
  because: 'A step is felt, holds water and takes the blow of every wheel.',
  sources: [ufcRepair('3.3.4 and 7: level or at most 1/8 in high')],
  roles: { after: ['high', 'proud', 'above'], before: ['sits', 'stands', 'high', 'proud'] },
  bare: { us: 'in', metric: 'mm' },
  question: {
    text: 'How high does the patch stand over the old road at its edge?',
    ease: 1,
    choices: [
      { number: 0.125, unit: 'in' },
      { number: 0.25, unit: 'in' },
      { number: 0.5, unit: 'in' },
    ],
  },
  plausible: { min: { number: 0, unit: 'in' }, max: { number: 6, unit: 'in' } },
  usedAt: ['final-roll'],
});
