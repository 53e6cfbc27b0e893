import { geometry, quantity } from '../shapes.ts';

export default quantity({
  id: 'rolling-rate-all',
  title: 'tons all rollers keep up with in an hour',
  dimension: 'output',
  units: { us: 'ton/h', metric: 't/h' },
  rounding: { us: 'whole', metric: 'whole' },
  because: 'Rollers side by side add up, while none waits on another.',
  sources: [geometry],
  cues: ['ton hour all+roller', 'ton hour #number roller'],
  bare: false,
  asks: 'How many tons an hour, all rollers?',
  beside: ['rolling-rate', 'laying-rate'],
  usedAt: ['roll-lift'],
  enough: 'no-larger',
});
