import { larger, minus, over, roundUp } from '../../calc/expression.ts';
import bladeOverlap from '../quantities/blade-overlap.ts';
import bladePasses from '../quantities/blade-passes.ts';
import bladeReach from '../quantities/blade-reach.ts';
import patchWidth from '../quantities/patch-width.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'blade-passes',
  title: 'strips to cover the width',
  finds: bladePasses,
  by: larger(1, roundUp(over(minus(patchWidth, bladeOverlap), minus(bladeReach, bladeOverlap)))),
  bothWays: false,
  because: 'The first strip lays its whole width, every other one its width less the overlap.',
  sources: [geometry],
  examples: [
    {
      given: { 'patch-width': [19.5, 'ft'], 'blade-overlap': [1, 'ft'], 'blade-reach': [10.392, 'ft'] },
      finds: [2, '1'],
      source: 'worked out by hand: 18.5 ÷ 9.392 is 1.97',
    },
    {
      given: { 'patch-width': [20, 'ft'], 'blade-overlap': [1, 'ft'], 'blade-reach': [10.392, 'ft'] },
      finds: [3, '1'],
      source: 'worked out by hand: 19 ÷ 9.392 is 2.02',
    },
  ],
});
