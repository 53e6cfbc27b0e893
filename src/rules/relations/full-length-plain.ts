import { times } from '../../calc/expression.ts';
import fullLength from '../quantities/full-length.ts';
import patchLength from '../quantities/patch-length.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'full-length-plain',
  title: 'no feathers',
  finds: fullLength,
  by: times(patchLength),
  plan: true,
  because: 'With no feathers said, the whole length lies at full depth.',
  sources: [geometry],
  examples: [{ given: { 'patch-length': [300, 'ft'] }, finds: [300, 'ft'], source: 'the same length' }],
});
