import { geometry, quantity } from '../shapes.ts';

export default quantity({
  id: 'crown-wedge-depth',
  title: 'average depth of the crown wedge',
  dimension: 'length',
  units: { us: 'in', metric: 'mm' },
  rounding: { us: 'eighths', metric: 'whole' },
  because: 'A wedge from nothing is half its thick side, on average.',
  sources: [geometry],
  cues: ['average depth crown|wedge'],
  bare: false,
  beside: ['crown-wedge-mass'],
});
