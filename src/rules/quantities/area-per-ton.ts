import { quantity } from '../shapes.ts';
import { virginia } from '../sources-craft.ts';

export default quantity({
  id: 'area-per-ton',
  title: 'area one short ton covers',
  dimension: 'area',
  units: { us: 'yd2', metric: 'm2' },
  rounding: { us: 'tenth', metric: 'tenth' },
  because: 'At an inch a ton covers about 18 square yards; twice as thick, half as much.',
  sources: [virginia('ch. 9, p. 9-1')],
  cues: ['ton cover -load', 'square+yard per+ton', 'area per+ton', 'yard+ton'],
  bare: false,
  asks: 'Square yards per ton?',
  note: 'A short ton is 2,000 lb.',
});
