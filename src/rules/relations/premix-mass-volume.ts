import { times } from '../../calc/expression.ts';
import patchVolume from '../quantities/patch-volume.ts';
import premixMass from '../quantities/premix-mass.ts';
import unitWeight from '../quantities/unit-weight.ts';
import { relation } from '../shapes.ts';
import { armyPaving } from '../sources-craft.ts';

export default relation({
  id: 'premix-mass-volume',
  title: 'tons from the compacted volume',
  finds: premixMass,
  by: times(patchVolume, unitWeight),
  because: 'Volume as rolled times what it weighs as rolled; a loose volume would need a loose weight.',
  sources: [armyPaving('density range of compacted mix')],
  examples: [
    {
      given: { 'patch-volume': [100, 'ft3'], 'unit-weight': [140, 'lb/ft3'] },
      finds: [7, 'ton'],
      source: 'worked by hand: 14,000 lb; 140 lb/ft³ is the low end printed in Subcourse EN5459',
    },
  ],
});
