import { manual } from '../manual.ts';
import { quantity } from '../shapes.ts';
import longest from './short-taper-max.ts';
import shortest from './short-taper-min.ts';

export default quantity({
  id: 'downstream-taper',
  title: 'downstream taper',
  dimension: 'length',
  units: { us: 'ft', metric: 'm' },
  rounding: { us: 'whole', metric: 'tenth' },
  because: 'It shows drivers that the work is behind them and the lane is theirs again. The manual makes it optional.',
  sources: [manual('Table 6B-3')],
  cues: ['downstream taper -cone -device', 'taper after|past+work -cone -device'],
  alsoCalled: ['termination taper'],
  bare: false,
  default: { ...longest.default!, low: shortest.default!.number },
  asks: 'How long a downstream taper?',
  beside: ['flagger-taper', 'device-spacing-taper'],
  usedAt: ['traffic-control-up'],
});
