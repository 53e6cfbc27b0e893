import { times } from '../../calc/expression.ts';
import layoutKind from '../choices/layout-kind.ts';
import workZone from '../quantities/work-zone.ts';
import zoneLength from '../quantities/zone-length.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'work-zone-flaggers',
  title: 'the zone of this layout',
  finds: workZone,
  by: times(zoneLength),
  bothWays: false,
  when: [{ choice: layoutKind, is: ['flaggers'] }],
  because: 'The layout named is this one.',
  sources: [geometry],
  examples: [
    {
      given: { 'zone-length': [3000, 'ft'], 'layout-kind': 'flaggers' },
      finds: [3000, 'ft'],
      source: 'the same length',
    },
  ],
});
