import { times } from '../../calc/expression.ts';
import layoutKind from '../choices/layout-kind.ts';
import shoulderZoneLength from '../quantities/shoulder-zone-length.ts';
import workZone from '../quantities/work-zone.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'work-zone-shoulder',
  title: 'the zone of this layout',
  finds: workZone,
  by: times(shoulderZoneLength),
  bothWays: false,
  when: [{ choice: layoutKind, is: ['shoulder'] }],
  because: 'The layout named is this one.',
  sources: [geometry],
  examples: [
    {
      given: { 'shoulder-zone-length': [3000, 'ft'], 'layout-kind': 'shoulder' },
      finds: [3000, 'ft'],
      source: 'the same length',
    },
  ],
});
