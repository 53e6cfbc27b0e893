import { times } from '../../calc/expression.ts';
import endTaperLength from '../quantities/end-taper-length.ts';
import endTaperRatio from '../quantities/end-taper-ratio.ts';
import patchDepth from '../quantities/patch-depth.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'end-taper-length',
  title: 'length of the end taper',
  finds: endTaperLength,
  by: times(patchDepth, endTaperRatio),
  because: 'So many feet for every inch.',
  sources: [geometry],
  examples: [
    {
      given: { 'patch-depth': [1.5, 'in'], 'end-taper-ratio': [25, 'ft/in'] },
      finds: [37.5, 'ft'],
      source: 'worked out by hand',
    },
  ],
});
