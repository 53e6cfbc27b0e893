import { commonPractice, quantity } from '../shapes.ts';

export default quantity({
  id: 'return-speed',
  title: 'speed empty',
  dimension: 'speed',
  units: { us: 'mph', metric: 'km/h' },
  rounding: { us: 'whole', metric: 'whole' },
  because: 'An empty truck is a little faster; where nobody says, the same is taken.',
  sources: [commonPractice],
  roles: { after: ['back', 'empty', 'return'], before: ['back', 'empty', 'return'] },
  setting: ['back', 'empty', 'return'],
  bare: { us: 'mph', metric: 'km/h' },
  plausible: { min: { number: 2, unit: 'mph' }, max: { number: 80, unit: 'mph' } },
  beside: ['cycle-time'],
});
