import { geometry, quantity } from '../shapes.ts';

export default quantity({
  id: 'windrow-length',
  title: 'row one load makes',
  dimension: 'length',
  units: { us: 'ft', metric: 'm' },
  rounding: { us: 'whole', metric: 'whole' },
  because: 'A load runs out where its tons are in the row.',
  sources: [geometry],
  cues: ['how-far windrow load', 'how+long windrow load|truck', 'windrow+length', 'load make windrow'],
  bare: false,
  asks: 'How long a row does a load make?',
  beside: ['windrow-section', 'truck-payload'],
  usedAt: ['windrow'],
});
