import { times } from '../../calc/expression.ts';
import patchDepth from '../quantities/patch-depth.ts';
import spreadRate from '../quantities/spread-rate.ts';
import unitWeight from '../quantities/unit-weight.ts';
import { relation } from '../shapes.ts';
import { floridaEstimates } from '../sources-craft.ts';

export default relation({
  id: 'spread-rate',
  title: 'spread rate of the whole depth',
  finds: spreadRate,
  by: times(unitWeight, patchDepth),
  because: 'Each inch of depth puts the weight of one inch on every square yard.',
  sources: [floridaEstimates('spread rate from the maximum specific gravity')],
  examples: [
    {
      given: { 'unit-weight': [101.28, 'lb/yd2/in'], 'patch-depth': [1.5, 'in'] },
      finds: [151.92, 'lb/yd2'],
      source: 'Florida DOT final-estimates slides: 101.28 at 1.5 in is 151.92, target 152 (printed)',
    },
  ],
});
