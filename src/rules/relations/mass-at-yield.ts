import { over, times } from '../../calc/expression.ts';
import massAtYield from '../quantities/mass-at-yield.ts';
import patchLength from '../quantities/patch-length.ts';
import placedLength from '../quantities/placed-length.ts';
import placedMass from '../quantities/placed-mass.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'mass-at-yield',
  title: 'the whole patch laid as its first part was',
  finds: massAtYield,
  by: over(times(placedMass, patchLength), placedLength),
  bothWays: false,
  because: 'The same width and thickness on: tons go with the length.',
  sources: [geometry],
  examples: [
    {
      given: { 'placed-mass': [45, 'ton'], 'patch-length': [300, 'ft'], 'placed-length': [150, 'ft'] },
      finds: [90, 'ton'],
      source: 'worked by hand: 45 tons × 300 ÷ 150',
    },
  ],
});
