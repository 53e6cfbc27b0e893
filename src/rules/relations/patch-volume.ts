import { times } from '../../calc/expression.ts';
import patchArea from '../quantities/patch-area.ts';
import patchDepth from '../quantities/patch-depth.ts';
import patchVolume from '../quantities/patch-volume.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'patch-volume',
  title: 'compacted volume of the patch',
  finds: patchVolume,
  by: times(patchArea, patchDepth),
  because: 'Area by its average depth.',
  sources: [geometry],
  examples: [
    {
      given: { 'patch-area': [400, 'yd2'], 'patch-depth': [2, 'in'] },
      finds: [600, 'ft3'],
      source: 'geometry: 3,600 ft² × 1/6 ft',
    },
  ],
});
