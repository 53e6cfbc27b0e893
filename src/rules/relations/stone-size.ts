import { lookup } from '../../calc/expression.ts';
import mixNominalSize from '../quantities/mix-nominal-size.ts';
import stoneSize from '../quantities/stone-size.ts';
import { rowsOf } from '../rows.ts';
import { relation } from '../shapes.ts';
import { fromMemory } from '../sources-craft.ts';
import largestStone from '../tables/largest-stone.ts';

export default relation({
  id: 'stone-size',
  title: 'largest stone by the name of the mix',
  finds: stoneSize,
  by: lookup(mixNominalSize, rowsOf(largestStone)),
  second: true,
  plan: true,
  because: 'A mix is named one sieve under its largest stone.',
  sources: [fromMemory('naming of dense mixes: largest size one sieve above the nominal one')],
  note: 'Taken as the nominal size of the mix: its largest stone is one sieve larger.',
  examples: [
    {
      given: { 'mix-nominal-size': [0.5, 'in'] },
      finds: [0.75, 'in'],
      source: 'standard sieves: the one above 1/2 in (12.5 mm) is 3/4 in (19 mm)',
    },
    {
      given: { 'mix-nominal-size': [9.5, 'mm'] },
      finds: [0.5, 'in'],
      source: 'standard sieves: the one above 9.5 mm is 12.5 mm (1/2 in)',
    },
  ],
});
