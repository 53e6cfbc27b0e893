import { table } from '../shapes.ts';
import { fromMemory } from '../sources-craft.ts';

export default table({
  id: 'largest-stone',
  title: 'largest stone by the nominal size of a mix',
  because: 'Sieves of one series: the largest stone passes the sieve above the one the mix is named by.',
  sources: [fromMemory('standard sieve series of dense mixes (AASHTO M 323), one size up')],
  key: { dimension: 'length', unit: 'in' },
  value: { dimension: 'length', unit: 'in' },
  rows: [
    [0.1875, 0.375],
    [0.375, 0.5],
    [0.5, 0.75],
    [0.75, 1],
    [1, 1.5],
  ],
  between: 'next row up',
});
