import { commonPractice, quantity } from '../shapes.ts';

export default quantity({
  id: 'feather-length',
  title: 'feather at an end',
  dimension: 'length',
  units: { us: 'ft', metric: 'm' },
  rounding: { us: 'whole', metric: 'tenth' },
  because: 'A feather runs from full depth to nothing, so it holds half of what the same length holds at full depth.',
  sources: [commonPractice],
  roles: { after: ['feather'], before: ['feather'] },
  setting: ['feather'],
  bare: { us: 'ft', metric: 'm' },
  plausible: { min: { number: 0.5, unit: 'ft' }, max: { number: 300, unit: 'ft' } },
});
