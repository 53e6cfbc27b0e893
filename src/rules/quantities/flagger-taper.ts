import { manual } from '../manual.ts';
import { quantity } from '../shapes.ts';
import longest from './short-taper-max.ts';
import shortest from './short-taper-min.ts';

export default quantity({
  id: 'flagger-taper',
  title: 'flagger taper',
  dimension: 'length',
  units: { us: 'ft', metric: 'm' },
  rounding: { us: 'whole', metric: 'tenth' },
  because: 'Traffic stops before it, so it only shows where the lane is; a long one would invite passing at speed.',
  sources: [manual('Table 6B-3')],
  cues: [
    'flagger taper -cone -device',
    'one-lane taper -merge -cone -device',
    'two-way|two-lane taper -merge -cone -device',
  ],
  alsoCalled: ['one-lane two-way taper', 'flagging taper'],
  bare: false,
  default: { ...longest.default!, low: shortest.default!.number },
  asks: 'How long a flagger taper?',
  beside: ['downstream-taper', 'device-spacing-taper', 'buffer-length'],
  usedAt: ['traffic-control-up'],
  caution: 'Traffic stops before this taper. It is no merging taper, and never takes the place of one.',
});
