import { quantity } from '../shapes.ts';
import { ltpp } from '../sources-work.ts';

export default quantity({
  id: 'crack-width',
  title: 'width of the crack',
  dimension: 'length',
  units: { us: 'in', metric: 'mm' },
  rounding: { us: 'eighths', metric: 'whole' },
  because: 'The mean opening tells whether sealant can hold it, and how severe it is.',
  sources: [ltpp('longitudinal and transverse cracking')],
  roles: { after: ['wide', 'open', 'crack'], before: ['crack', 'open'] },
  setting: ['crack', 'slippage', 'half-moon'],
  bare: { us: 'in', metric: 'mm' },
  question: {
    text: 'How wide does the crack stand open, on average?',
    ease: 1,
    choices: [
      { number: 0.125, unit: 'in' },
      { number: 0.5, unit: 'in' },
      { number: 1, unit: 'in' },
    ],
  },
  plausible: { min: { number: 0.01, unit: 'in' }, max: { number: 6, unit: 'in' } },
});
