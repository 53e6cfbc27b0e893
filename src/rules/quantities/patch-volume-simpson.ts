import { geometry, quantity } from '../shapes.ts';

export default quantity({
  id: 'patch-volume-simpson',
  title: "compacted volume by Simpson's rule",
  dimension: 'volume',
  units: { us: 'yd3', metric: 'm3' },
  rounding: { us: 'tenth', metric: 'tenth' },
  because:
    'A curve through three readings at a time follows a smooth low better than straight lines do; where the two rules part, more readings are wanted.',
  sources: [geometry],
  bare: false,
  plausible: { min: { number: 0.01, unit: 'ft3' }, max: { number: 100000, unit: 'yd3' } },
});
