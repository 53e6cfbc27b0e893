import { times } from '../../calc/expression.ts';
import taperKind from '../choices/taper-kind.ts';
import { manual } from '../manual.ts';
import flaggerTaper from '../quantities/flagger-taper.ts';
import taperNeeded from '../quantities/taper-needed.ts';
import { relation } from '../shapes.ts';

export default relation({
  id: 'taper-needed-flagger',
  title: 'the kind named: flagger',
  finds: taperNeeded,
  by: times(flaggerTaper),
  bothWays: false,
  when: [{ choice: taperKind, is: ['flagger'] }],
  because: 'The kind is settled, so its length is.',
  sources: [manual('Table 6B-3')],
  examples: [
    {
      given: { 'flagger-taper': [100, 'ft'], 'taper-kind': 'flagger' },
      finds: [100, 'ft'],
      source: 'MUTCD 11th ed., Table 6B-3',
    },
  ],
});
