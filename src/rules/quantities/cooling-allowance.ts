import { quantity } from '../shapes.ts';

export default quantity({
  id: 'cooling-allowance',
  title: 'allowance on the cooling estimate',
  dimension: 'count',
  units: { us: '1', metric: '1' },
  rounding: { us: 'hundredth', metric: 'hundredth' },
  because: 'How well the mix carries heat is known to a quarter either way; sun, shade and damp are left out.',
  sources: [{ document: 'worked out with the conductivity of the mix a quarter higher and lower', seen: 'derived' }],
  bare: false,
  default: { number: 1, unit: '1', low: 0.75, high: 1.25 },
});
