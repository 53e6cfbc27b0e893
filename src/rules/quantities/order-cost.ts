import { geometry, quantity } from '../shapes.ts';

export default quantity({
  id: 'order-cost',
  title: 'cost of the mix ordered',
  dimension: 'money',
  units: { us: 'USD', metric: 'USD' },
  rounding: { us: 'whole', metric: 'whole' },
  because: 'The plant bills what is loaded, ends and waste with it.',
  sources: [geometry],
  cues: ['cost order', 'order cost|price'],
  bare: false,
  asks: 'What does the order cost?',
  beside: ['material-cost'],
  caution: 'Your prices; nothing is assumed.',
});
