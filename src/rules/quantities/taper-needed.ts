import { manual } from '../manual.ts';
import { quantity } from '../shapes.ts';

export default quantity({
  id: 'taper-needed',
  title: 'taper of the kind named',
  dimension: 'length',
  units: { us: 'ft', metric: 'm' },
  rounding: { us: 'up', metric: 'up' },
  because:
    'The word alone never tells which: a merging taper before flaggers invites passing at speed, a flagger taper on a multilane road kills.',
  sources: [manual('Table 6B-3')],
  cues: ['taper'],
  bare: false,
  standsIn: true,
  asks: 'How long a taper?',
  usedAt: ['traffic-control-up'],
});
