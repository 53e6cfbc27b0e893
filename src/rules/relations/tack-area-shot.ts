import { times } from '../../calc/expression.ts';
import patchLength from '../quantities/patch-length.ts';
import sprayWidth from '../quantities/spray-width.ts';
import tackArea from '../quantities/tack-area.ts';
import { relation } from '../shapes.ts';
import { virginia } from '../sources-craft.ts';

export default relation({
  id: 'tack-area-shot',
  title: 'area the bar went over',
  finds: tackArea,
  by: times(patchLength, sprayWidth),
  bothWays: false,
  said: [sprayWidth],
  second: true,
  plan: true,
  because: 'One pull of the bar wets its own width.',
  sources: [virginia('ch. 8, HMA-8, problems 1 to 3')],
  examples: [
    {
      given: { 'patch-length': [5250, 'ft'], 'spray-width': [11, 'ft'] },
      finds: [5250 * 11, 'ft2'],
      source: 'Virginia DOT, HMA-8 problem 1: 5,250 × 11 ft',
    },
  ],
});
