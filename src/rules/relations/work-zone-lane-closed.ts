import { times } from '../../calc/expression.ts';
import layoutKind from '../choices/layout-kind.ts';
import closureLength from '../quantities/closure-length.ts';
import workZone from '../quantities/work-zone.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'work-zone-lane-closed',
  title: 'the zone of this layout',
  finds: workZone,
  by: times(closureLength),
  bothWays: false,
  when: [{ choice: layoutKind, is: ['lane-closed'] }],
  because: 'The layout named is this one.',
  sources: [geometry],
  examples: [
    {
      given: { 'closure-length': [3000, 'ft'], 'layout-kind': 'lane-closed' },
      finds: [3000, 'ft'],
      source: 'the same length',
    },
  ],
});
