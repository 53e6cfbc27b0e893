import { times } from '../../calc/expression.ts';
import fullLength from '../quantities/full-length.ts';
import patchArea from '../quantities/patch-area.ts';
import patchCount from '../quantities/patch-count.ts';
import patchWidth from '../quantities/patch-width.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'patch-area-count',
  title: 'area of several like patches',
  finds: patchArea,
  by: times(fullLength, patchWidth, patchCount),
  keeps: [patchCount],
  because: 'Patches of one size add up.',
  sources: [geometry],
  note: 'All the patches together; each is taken to be of this size.',
  examples: [
    {
      given: { 'full-length': [20, 'ft'], 'patch-width': [10, 'ft'], 'patch-count': [3, '1'] },
      finds: [600, 'ft2'],
      source: 'geometry: 3 × 10 × 20',
    },
  ],
});
