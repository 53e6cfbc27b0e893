import { quantity } from '../shapes.ts';
import { astmPci } from '../sources-work.ts';

export default quantity({
  id: 'pothole-width',
  title: 'width of the pothole',
  dimension: 'length',
  units: { us: 'in', metric: 'mm' },
  rounding: { us: 'whole', metric: 'whole' },
  because: 'Mean of its width and its length; with the depth it gives how severe the hole is.',
  sources: [astmPci('potholes', 'restated')],
  roles: { after: ['across', 'wide', 'diameter'], before: ['diameter'] },
  setting: ['pothole', 'hole'],
  bare: { us: 'in', metric: 'mm' },
  plausible: { min: { number: 2, unit: 'in' }, max: { number: 10, unit: 'ft' } },
});
