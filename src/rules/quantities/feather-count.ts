import { commonPractice, quantity } from '../shapes.ts';

export default quantity({
  id: 'feather-count',
  title: 'feathered ends',
  dimension: 'count',
  units: { us: '1', metric: '1' },
  rounding: { us: 'whole', metric: 'whole' },
  because: 'A patch has two ends; where it meets a curb, a bridge or an older patch one of them is cut square.',
  sources: [commonPractice],
  roles: { after: ['feather', 'end'] },
  setting: ['feather'],
  plausible: { min: { number: 1, unit: '1' }, max: { number: 2, unit: '1' } },
});
