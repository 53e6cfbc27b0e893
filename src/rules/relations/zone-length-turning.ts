import { minus, plus } from '../../calc/expression.ts';
import patchLength from '../quantities/patch-length.ts';
import workLength from '../quantities/work-length.ts';
import zoneLength from '../quantities/zone-length.ts';
import zoneLengthTurning from '../quantities/zone-length-turning.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'zone-length-turning',
  title: 'with the work space in place of the patch',
  finds: zoneLengthTurning,
  by: plus(zoneLength, minus(workLength, patchLength)),
  bothWays: false,
  because: 'Everything stays where it is relative to the ends of the work space, which is longer than the patch.',
  sources: [geometry],
  examples: [
    {
      given: { 'zone-length': [3960, 'ft'], 'work-length': [500, 'ft'], 'patch-length': [400, 'ft'] },
      finds: [4060, 'ft'],
      source: '3,960 ft with 100 ft more of work space',
    },
  ],
});
