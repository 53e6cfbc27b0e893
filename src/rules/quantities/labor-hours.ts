import { geometry, quantity } from '../shapes.ts';

export default quantity({
  id: 'labor-hours',
  title: 'labor hours',
  dimension: 'time',
  units: { us: 'h', metric: 'h' },
  rounding: { us: 'tenth', metric: 'tenth' },
  because: 'Everybody on the crew, for every hour worked.',
  sources: [geometry],
  cues: ['labor+hour', 'man|men+hour', 'how-many man|labor hour'],
  bare: false,
  asks: 'How many labor hours is that?',
  beside: ['labor-cost'],
});
