import { over, plus, times } from '../../calc/expression.ts';
import featherCount from '../quantities/feather-count.ts';
import featherLength from '../quantities/feather-length.ts';
import fullLength from '../quantities/full-length.ts';
import patchLength from '../quantities/patch-length.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'full-length',
  title: 'feathers counted half',
  finds: fullLength,
  by: plus(patchLength, over(times(featherLength, featherCount), 2)),
  keeps: [featherCount],
  because: 'A wedge from full depth to nothing holds half of what the same length holds at full depth.',
  sources: [geometry],
  note: 'Each feather counts half its length; the patch length is taken as what lies between them at full depth.',
  examples: [
    {
      given: { 'patch-length': [90, 'ft'], 'feather-length': [20, 'ft'], 'feather-count': [1, '1'] },
      finds: [100, 'ft'],
      source: 'geometry: 90 + 20 ÷ 2',
    },
  ],
});
