import { minus } from '../../calc/expression.ts';
import leftAtYield from '../quantities/left-at-yield.ts';
import massAtYield from '../quantities/mass-at-yield.ts';
import placedMass from '../quantities/placed-mass.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'left-at-yield',
  title: 'what the rest of the patch takes at this yield',
  finds: leftAtYield,
  by: minus(massAtYield, placedMass),
  bothWays: false,
  because: 'The whole less what is down.',
  sources: [geometry],
  examples: [
    {
      given: { 'mass-at-yield': [96, 'ton'], 'placed-mass': [45, 'ton'] },
      finds: [51, 'ton'],
      source: 'worked by hand',
    },
  ],
});
