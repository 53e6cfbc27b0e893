import { times } from '../../calc/expression.ts';
import patchLength from '../quantities/patch-length.ts';
import rutLength from '../quantities/rut-length.ts';
import { commonPractice, relation } from '../shapes.ts';

export default relation({
  id: 'rut-length',
  title: 'ruts as long as the patch',
  finds: rutLength,
  by: times(patchLength),
  bothWays: false,
  second: true,
  plan: true,
  because: 'With no other length said, the ruts run the length of the patch.',
  sources: [commonPractice],
  examples: [{ given: { 'patch-length': [500, 'ft'] }, finds: [500, 'ft'], source: 'the same length' }],
});
