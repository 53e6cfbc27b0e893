import { commonPractice, quantity } from '../shapes.ts';

export default quantity({
  id: 'table-speed',
  title: 'speed for the taper',
  dimension: 'speed',
  units: { us: 'mph', metric: 'km/h' },
  rounding: { us: 'whole', metric: 'whole' },
  because:
    'The manual has one formula up to 40 mph and another from 45, and says nothing of what lies between; the next row up errs long, never short.',
  sources: [commonPractice],
  bare: false,
});
