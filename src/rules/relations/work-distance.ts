import { plus } from '../../calc/expression.ts';
import patchLength from '../quantities/patch-length.ts';
import workDistance from '../quantities/work-distance.ts';
import { commonPractice, relation } from '../shapes.ts';

export default relation({
  id: 'work-distance',
  title: 'a pass as long as the patch',
  finds: workDistance,
  by: plus(patchLength),
  bothWays: false,
  second: true,
  plan: true,
  because: 'A pass runs the length of the patch, where nobody says otherwise.',
  sources: [commonPractice],
  examples: [{ given: { 'patch-length': [300, 'ft'] }, finds: [300, 'ft'], source: 'common practice' }],
});
