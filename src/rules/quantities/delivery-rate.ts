import { geometry, quantity } from '../shapes.ts';

export default quantity({
  id: 'delivery-rate',
  title: 'mix the trucks bring in an hour',
  dimension: 'output',
  units: { us: 'ton/h', metric: 't/h' },
  rounding: { us: 'whole', metric: 'whole' },
  because: 'A load every so many minutes.',
  sources: [geometry],
  cues: ['ton hour truck|haul|deliver', 'how-many+ton hour truck|haul', 'truck bring|deliver|haul hour'],
  bare: false,
  asks: 'How many tons an hour do they haul?',
  beside: ['truck-spacing'],
});
