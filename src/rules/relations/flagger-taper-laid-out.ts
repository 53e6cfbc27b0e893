import { times } from '../../calc/expression.ts';
import taperKind from '../choices/taper-kind.ts';
import flaggerTaper from '../quantities/flagger-taper.ts';
import taperLength from '../quantities/taper-length.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'flagger-taper-laid-out',
  title: 'the taper laid out',
  finds: flaggerTaper,
  by: times(taperLength),
  bothWays: false,
  when: [{ choice: taperKind, is: ['flagger'] }],
  because: 'The taper named is this one.',
  sources: [geometry],
  examples: [
    { given: { 'taper-length': [50, 'ft'], 'taper-kind': 'flagger' }, finds: [50, 'ft'], source: 'the same length' },
  ],
});
