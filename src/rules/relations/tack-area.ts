import { times } from '../../calc/expression.ts';
import patchArea from '../quantities/patch-area.ts';
import tackArea from '../quantities/tack-area.ts';
import tackCoats from '../quantities/tack-coats.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'tack-area',
  title: 'area to tack',
  finds: tackArea,
  by: times(patchArea, tackCoats),
  keeps: [tackCoats],
  because: 'Each coat covers the whole patch once.',
  sources: [geometry],
  examples: [
    { given: { 'patch-area': [800, 'yd2'], 'tack-coats': [2, '1'] }, finds: [1600, 'yd2'], source: 'geometry' },
  ],
});
