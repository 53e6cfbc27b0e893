import { geometry, quantity } from '../shapes.ts';

export default quantity({
  id: 'full-length',
  title: 'length counted at full depth',
  dimension: 'length',
  units: { us: 'ft', metric: 'm' },
  rounding: { us: 'whole', metric: 'tenth' },
  because: 'One length for the whole patch: what lies at full depth, and each feather at half of its own.',
  sources: [geometry],
  bare: false,
});
