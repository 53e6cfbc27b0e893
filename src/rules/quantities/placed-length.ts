import { commonPractice, quantity } from '../shapes.ts';
import patchLength from './patch-length.ts';

export default quantity({
  id: 'placed-length',
  title: 'length laid so far',
  dimension: 'length',
  units: { us: 'ft', metric: 'm' },
  rounding: { us: 'whole', metric: 'tenth' },
  because: 'A check in the middle of the job goes by the length already laid, not by the whole patch.',
  sources: [commonPractice],
  roles: { after: ['done', 'laid'], before: ['first', 'laid'] },
  setting: ['done', 'first', 'laid'],
  bare: false,
  plausible: { min: { number: 1, unit: 'ft' }, max: { number: 10, unit: 'mi' } },
  saidLike: patchLength,
});
