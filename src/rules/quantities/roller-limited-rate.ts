import { geometry, quantity } from '../shapes.ts';

export default quantity({
  id: 'roller-limited-rate',
  title: 'tons an hour one roller allows',
  dimension: 'output',
  units: { us: 'ton/h', metric: 't/h' },
  rounding: { us: 'whole', metric: 'whole' },
  because: 'The slowest of blade, roller and trucks sets the pace; in thin lifts it is most often the roller.',
  sources: [geometry],
  cues: ['roller limit|slow ton hour', 'what limit ton hour'],
  bare: false,
  beside: ['load-rolling-time', 'rolling-rate'],
  enough: 'no-larger',
});
