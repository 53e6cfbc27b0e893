import { commonPractice, quantity } from '../shapes.ts';

export default quantity({
  id: 'stone-size',
  title: 'largest stone',
  dimension: 'length',
  units: { us: 'in', metric: 'mm' },
  rounding: { us: 'eighths', metric: 'tenth' },
  because:
    'The blade drags whatever stands higher than the lift, so it is the largest stone that counts, not the size the mix is sold by.',
  sources: [commonPractice],
  roles: { after: ['largest', 'stone', 'minus'], before: ['stone', 'largest', 'biggest'] },
  bare: { us: 'in', metric: 'mm' },
  question: {
    text: 'How large is the largest stone in the mix?',
    ease: 2,
    choices: [
      { number: 0.375, unit: 'in' },
      { number: 0.5, unit: 'in' },
      { number: 0.75, unit: 'in' },
    ],
  },
  plausible: { min: { number: 0.1, unit: 'in' }, max: { number: 3, unit: 'in' } },
});
