import { times } from '../../calc/expression.ts';
import { californiaManual, manual } from '../manual.ts';
import mergingTaper from '../quantities/merging-taper.ts';
import shiftingTaper from '../quantities/shifting-taper.ts';
import { relation } from '../shapes.ts';

export default relation({
  id: 'shifting-taper',
  title: 'half the merging length',
  finds: shiftingTaper,
  by: times(0.5, mergingTaper),
  because: 'Traffic moves over but nobody has to merge.',
  sources: [manual('Table 6B-3'), californiaManual('Table 6B-3(CA)')],
  examples: [
    {
      given: { 'merging-taper': [660, 'ft'] },
      finds: [330, 'ft'],
      source: 'California MUTCD 2026, Table 6B-3(CA), 55 mph',
    },
  ],
});
