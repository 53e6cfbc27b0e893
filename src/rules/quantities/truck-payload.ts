import { commonPractice, quantity } from '../shapes.ts';
import { federalWeights } from '../sources-craft.ts';
import premixMass from './premix-mass.ts';

export default quantity({
  id: 'truck-payload',
  title: 'load on a truck',
  dimension: 'mass',
  units: { us: 'ton', metric: 't' },
  rounding: { us: 'tenth', metric: 'tenth' },
  because:
    'What a truck may carry is its legal gross less what it weighs empty; three-axle trucks at federal axle weights carry nearer 11 tons, larger ones 15 and more.',
  sources: [commonPractice, federalWeights('axle weights; 11 tons is 46,000 lb less an empty truck of 24,000')],
  cues: ['payload -@check -#mass'],
  roles: {
    after: ['load', 'truck', 'payload', 'each', 'apiece', 'go', 'cover', 'reach', 'left'],
    before: ['truck', 'load', 'haul', 'carry', 'payload', 'tandem', 'ticket', 'loaded', 'hauling'],
  },
  saidAs: [{ cues: ['feet|far|foot|long|road per+ton'], number: 1, unit: 'ton' }],
  bare: false,
  bareTold: { us: 'ton', metric: 't' },
  default: { number: 15, unit: 'ton', low: 10, high: 15 },
  plausible: { min: { number: 0.5, unit: 'ton' }, max: { number: 35, unit: 'ton' } },
  note: 'The ticket decides.',
  caution: 'Loads within legal and posted weight; a posted limit is the whole truck.',
  saidLike: premixMass,
});
