import { times } from '../../calc/expression.ts';
import taperKind from '../choices/taper-kind.ts';
import downstreamTaper from '../quantities/downstream-taper.ts';
import taperLength from '../quantities/taper-length.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'downstream-taper-laid-out',
  title: 'the taper laid out',
  finds: downstreamTaper,
  by: times(taperLength),
  bothWays: false,
  when: [{ choice: taperKind, is: ['downstream'] }],
  because: 'The taper named is this one.',
  sources: [geometry],
  examples: [
    { given: { 'taper-length': [50, 'ft'], 'taper-kind': 'downstream' }, finds: [50, 'ft'], source: 'the same length' },
  ],
});
