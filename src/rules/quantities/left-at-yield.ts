import { commonPractice, quantity } from '../shapes.ts';

export default quantity({
  id: 'left-at-yield',
  title: 'mix still needed at this yield',
  dimension: 'mass',
  units: { us: 'ton', metric: 't' },
  rounding: { us: 'tenth', metric: 'tenth' },
  because:
    'A patch that is laid too thick runs short at its end: what is left to lay at the same thickness shows it in time.',
  sources: [commonPractice],
  bare: false,
  beside: ['mass-at-yield', 'placed-depth', 'premix-mass'],
});
