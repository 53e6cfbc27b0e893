import { quantity } from '../shapes.ts';
import { virginia } from '../sources-craft.ts';

export default quantity({
  id: 'length-per-ton',
  title: 'length one short ton covers',
  dimension: 'length',
  units: { us: 'ft', metric: 'm' },
  rounding: { us: 'hundredth', metric: 'hundredth' },
  because: 'Feet to the ton tells the spotter from the ticket alone where a truck runs empty.',
  sources: [virginia('ch. 9, p. 9-2')],
  bare: false,
  beside: ['load-length', 'area-per-ton'],
  note: 'A short ton is 2,000 lb.',
});
