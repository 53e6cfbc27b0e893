import { times } from '../../calc/expression.ts';
import taperKind from '../choices/taper-kind.ts';
import { manual } from '../manual.ts';
import shiftingTaper from '../quantities/shifting-taper.ts';
import taperNeeded from '../quantities/taper-needed.ts';
import { relation } from '../shapes.ts';

export default relation({
  id: 'taper-needed-shifting',
  title: 'the kind named: shifting',
  finds: taperNeeded,
  by: times(shiftingTaper),
  bothWays: false,
  when: [{ choice: taperKind, is: ['shifting'] }],
  because: 'The kind is settled, so its length is.',
  sources: [manual('Table 6B-3')],
  examples: [
    {
      given: { 'shifting-taper': [330, 'ft'], 'taper-kind': 'shifting' },
      finds: [330, 'ft'],
      source: 'MUTCD 11th ed., Table 6B-3',
    },
  ],
});
