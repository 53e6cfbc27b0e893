import { geometry, quantity } from '../shapes.ts';

export default quantity({
  id: 'crown-wedge-depth',
  title: 'average depth of the crown wedge',
  dimension: 'length',
  units: { us: 'in', metric: 'mm' },
  rounding: { us: 'eighths', metric: 'whole' },
  because: 'A wedge from nothing is half its thick side, on average.',
  sources: [geometry],
  cues: ['average depth crown|wedge', 'average depth crown+wedge', 'how+deep wedge'],
  bare: false,
  asks: 'Average depth of the crown wedge?',
  beside: ['crown-wedge-mass'],
});
