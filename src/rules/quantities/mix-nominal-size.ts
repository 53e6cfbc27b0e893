import { quantity } from '../shapes.ts';
import { fromMemory } from '../sources-craft.ts';

export default quantity({
  id: 'mix-nominal-size',
  title: 'nominal size of the mix',
  dimension: 'length',
  units: { us: 'in', metric: 'mm' },
  rounding: { us: 'eighths', metric: 'tenth' },
  because: 'A mix is named by the sieve that holds back a tenth of it, so a few stones are one sieve larger.',
  sources: [
    fromMemory(
      'naming of dense mixes: nominal size one sieve above the first that holds back over 10 %, largest size one above that',
    ),
  ],
  roles: { after: ['mix', 'nominal', 'fine-graded', 'coarse-graded'], before: ['nominal', 'mix'] },
  setting: ['lift', 'stone', 'nominal', 'thin', 'thick', 'size'],
  bare: { us: 'in', metric: 'mm' },
  plausible: { min: { number: 0.18, unit: 'in' }, max: { number: 1, unit: 'in' } },
});
