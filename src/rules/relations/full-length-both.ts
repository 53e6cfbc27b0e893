import { plus } from '../../calc/expression.ts';
import featherLength from '../quantities/feather-length.ts';
import fullLength from '../quantities/full-length.ts';
import patchLength from '../quantities/patch-length.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'full-length-both',
  title: 'a feather at each end, counted half',
  finds: fullLength,
  by: plus(patchLength, featherLength),
  plan: true,
  because: 'Two wedges from full depth to nothing hold what one such length holds at full depth.',
  sources: [geometry],
  note: 'Taken as feathered at both ends, each feather counting half; the patch length is what lies between them at full depth.',
  examples: [
    {
      given: { 'patch-length': [80, 'ft'], 'feather-length': [20, 'ft'] },
      finds: [100, 'ft'],
      source: 'geometry: 80 + 2 × 20 ÷ 2',
    },
  ],
});
