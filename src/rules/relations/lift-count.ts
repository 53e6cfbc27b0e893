import { over, roundUp } from '../../calc/expression.ts';
import deepestDepth from '../quantities/deepest-depth.ts';
import liftCount from '../quantities/lift-count.ts';
import liftMax from '../quantities/lift-max.ts';
import { relation } from '../shapes.ts';
import { ufcRepair } from '../sources-craft.ts';

export default relation({
  id: 'lift-count',
  title: 'lifts for the deepest spot',
  finds: liftCount,
  by: roundUp(over(deepestDepth, liftMax)),
  plan: true,
  because: 'Lows are filled first in level lifts, each rolled, so the deepest spot holds the most of them.',
  sources: [ufcRepair('ch. 7, p. 40')],
  examples: [
    {
      given: { 'deepest-depth': [2.5, 'in'], 'lift-max': [1, 'in'] },
      finds: [3, '1'],
      source: 'worked by hand: 2.5 ÷ 1, and part of a lift is a lift',
    },
    { given: { 'deepest-depth': [3, 'in'], 'lift-max': [1, 'in'] }, finds: [3, '1'], source: 'worked by hand: 3 ÷ 1' },
  ],
});
