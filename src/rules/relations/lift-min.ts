import { times } from '../../calc/expression.ts';
import liftMin from '../quantities/lift-min.ts';
import stoneSize from '../quantities/stone-size.ts';
import { relation } from '../shapes.ts';
import { bladeSpreading } from '../sources-craft.ts';

export default relation({
  id: 'lift-min',
  title: 'thinnest lift for the stone',
  finds: liftMin,
  by: times(1.5, stoneSize),
  because: 'Half a stone of room lets the largest one turn flat under the blade.',
  sources: [bladeSpreading('spreading of cold mix by blade: no layer under about 1.5 times the largest stone')],
  examples: [
    {
      given: { 'stone-size': [0.5, 'in'] },
      finds: [0.75, 'in'],
      source: 'worked by hand: 1.5 × 1/2',
    },
    { given: { 'stone-size': [0.75, 'in'] }, finds: [1.125, 'in'], source: 'worked by hand: 1.5 × 3/4' },
  ],
});
