import { times } from '../../calc/expression.ts';
import patchArea from '../quantities/patch-area.ts';
import patchDepth from '../quantities/patch-depth.ts';
import premixMass from '../quantities/premix-mass.ts';
import unitWeight from '../quantities/unit-weight.ts';
import { relation } from '../shapes.ts';
import { armyPaving, navyAdvanced } from '../sources-craft.ts';

export default relation({
  id: 'premix-mass',
  title: 'tons in place',
  finds: premixMass,
  by: times(patchArea, patchDepth, unitWeight),
  because: 'A square yard weighs so much for each inch it is thick, so area and average depth give the weight.',
  sources: [navyAdvanced('p. 8-31'), armyPaving('plant-mix example')],
  examples: [
    {
      given: { 'patch-area': [71500, 'ft2'], 'patch-depth': [2, 'in'], 'unit-weight': [147, 'lb/ft3'] },
      finds: [875.875, 'ton'],
      source:
        'Subcourse EN5459 (US Army), plant-mix example: 650 × 110 × 2 × 147 ÷ 24,000 (inputs read, product worked out)',
    },
  ],
});
