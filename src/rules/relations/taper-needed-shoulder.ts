import { times } from '../../calc/expression.ts';
import taperKind from '../choices/taper-kind.ts';
import { manual } from '../manual.ts';
import shoulderTaper from '../quantities/shoulder-taper.ts';
import taperNeeded from '../quantities/taper-needed.ts';
import { relation } from '../shapes.ts';

export default relation({
  id: 'taper-needed-shoulder',
  title: 'the kind named: shoulder',
  finds: taperNeeded,
  by: times(shoulderTaper),
  bothWays: false,
  when: [{ choice: taperKind, is: ['shoulder'] }],
  because: 'The kind is settled, so its length is.',
  sources: [manual('Table 6B-3')],
  examples: [
    {
      given: { 'shoulder-taper': [220, 'ft'], 'taper-kind': 'shoulder' },
      finds: [220, 'ft'],
      source: 'MUTCD 11th ed., Table 6B-3',
    },
  ],
});
