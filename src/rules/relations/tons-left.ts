import { minus } from '../../calc/expression.ts';
import placedMass from '../quantities/placed-mass.ts';
import premixMass from '../quantities/premix-mass.ts';
import tonsLeft from '../quantities/tons-left.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'tons-left',
  title: 'need less placed',
  finds: tonsLeft,
  by: minus(premixMass, placedMass),
  because:
    'What is not down yet is still to come; less than nothing means that more went down than the patch was to take.',
  sources: [geometry],
  examples: [
    {
      given: { 'premix-mass': [44, 'ton'], 'placed-mass': [30, 'ton'] },
      finds: [14, 'ton'],
      source: 'worked by hand: 44 − 30',
    },
  ],
});
