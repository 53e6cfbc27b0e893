import { commonPractice, quantity } from '../shapes.ts';

export default quantity({
  id: 'mass-at-yield',
  title: 'mix the patch takes at this yield',
  dimension: 'mass',
  units: { us: 'ton', metric: 't' },
  rounding: { us: 'tenth', metric: 'tenth' },
  because: 'What the first part of a patch took tells what the rest will take, if it is laid the same way.',
  sources: [commonPractice],
  bare: false,
});
