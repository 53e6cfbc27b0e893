import { times } from '../../calc/expression.ts';
import taperKind from '../choices/taper-kind.ts';
import { manual } from '../manual.ts';
import downstreamTaper from '../quantities/downstream-taper.ts';
import taperNeeded from '../quantities/taper-needed.ts';
import { relation } from '../shapes.ts';

export default relation({
  id: 'taper-needed-downstream',
  title: 'the kind named: downstream',
  finds: taperNeeded,
  by: times(downstreamTaper),
  bothWays: false,
  when: [{ choice: taperKind, is: ['downstream'] }],
  because: 'The kind is settled, so its length is.',
  sources: [manual('Table 6B-3')],
  examples: [
    {
      given: { 'downstream-taper': [100, 'ft'], 'taper-kind': 'downstream' },
      finds: [100, 'ft'],
      source: 'MUTCD 11th ed., Table 6B-3',
    },
  ],
});
