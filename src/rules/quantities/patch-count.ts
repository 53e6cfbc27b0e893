import { commonPractice, quantity } from '../shapes.ts';

export default quantity({
  id: 'patch-count',
  title: 'like patches',
  dimension: 'count',
  units: { us: '1', metric: '1' },
  rounding: { us: 'whole', metric: 'whole' },
  because: 'Patches of one size take the same mix each, and each has two ends of its own past which mix is dumped.',
  sources: [commonPractice],
  roles: { after: ['hole', 'patch', 'spot', 'of-them'] },
  default: { number: 1, unit: '1' },
  plausible: { min: { number: 1, unit: '1' }, max: { number: 500, unit: '1' } },
  counted: true,
});
