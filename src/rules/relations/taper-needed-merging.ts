import { times } from '../../calc/expression.ts';
import taperKind from '../choices/taper-kind.ts';
import { manual } from '../manual.ts';
import mergingTaper from '../quantities/merging-taper.ts';
import taperNeeded from '../quantities/taper-needed.ts';
import { relation } from '../shapes.ts';

export default relation({
  id: 'taper-needed-merging',
  title: 'the kind named: merging',
  finds: taperNeeded,
  by: times(mergingTaper),
  bothWays: false,
  when: [{ choice: taperKind, is: ['merging'] }],
  because: 'The kind is settled, so its length is.',
  sources: [manual('Table 6B-3')],
  examples: [
    {
      given: { 'merging-taper': [660, 'ft'], 'taper-kind': 'merging' },
      finds: [660, 'ft'],
      source: 'MUTCD 11th ed., Table 6B-3',
    },
  ],
});
