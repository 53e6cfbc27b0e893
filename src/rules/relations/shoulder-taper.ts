import { over } from '../../calc/expression.ts';
import { californiaManual, manual } from '../manual.ts';
import mergingTaper from '../quantities/merging-taper.ts';
import shoulderTaper from '../quantities/shoulder-taper.ts';
import { relation } from '../shapes.ts';

export default relation({
  id: 'shoulder-taper',
  title: 'a third of the merging length',
  finds: shoulderTaper,
  by: over(mergingTaper, 3),
  because: 'Nobody should be driving there. The table prints 0.33, the text one third; the longer is taken.',
  sources: [manual('Table 6B-3 and section 6B.08'), californiaManual('Table 6B-3(CA)')],
  examples: [
    {
      given: { 'merging-taper': [660, 'ft'] },
      finds: [220, 'ft'],
      source: 'California MUTCD 2026, Table 6B-3(CA), 55 mph',
    },
  ],
});
