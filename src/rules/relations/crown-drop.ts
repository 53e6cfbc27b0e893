import { times } from '../../calc/expression.ts';
import crossSlope from '../quantities/cross-slope.ts';
import crownDrop from '../quantities/crown-drop.ts';
import patchWidth from '../quantities/patch-width.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'crown-drop',
  title: 'fall across the width',
  finds: crownDrop,
  by: times(crossSlope, patchWidth),
  keeps: [patchWidth],
  because: 'Two in a hundred is two hundredths of the width.',
  sources: [geometry],
  examples: [
    {
      given: { 'cross-slope': [2, '%'], 'patch-width': [12, 'ft'] },
      finds: [2.88, 'in'],
      source: 'worked out by hand: 0.02 × 144 in',
    },
  ],
});
