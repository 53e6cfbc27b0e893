import { quantity } from '../shapes.ts';
import { floridaEstimates } from '../sources-craft.ts';

export default quantity({
  id: 'max-specific-gravity',
  title: 'maximum specific gravity',
  dimension: 'count',
  units: { us: '1', metric: '1' },
  rounding: { us: 'thousandth', metric: 'thousandth' },
  because: 'The lab weighs the mix with no air left in it; what is rolled on the road comes to a steady share of that.',
  sources: [floridaEstimates('spread rate from the maximum specific gravity')],
  roles: { after: ['gmm', 'gravity', 'rice'], before: ['gmm', 'gravity', 'rice'] },
  plausible: { min: { number: 2, unit: '1' }, max: { number: 3, unit: '1' } },
});
