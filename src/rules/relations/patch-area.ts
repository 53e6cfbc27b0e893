import { times } from '../../calc/expression.ts';
import fullLength from '../quantities/full-length.ts';
import patchArea from '../quantities/patch-area.ts';
import patchWidth from '../quantities/patch-width.ts';
import { relation } from '../shapes.ts';
import { armyPaving } from '../sources-craft.ts';

export default relation({
  id: 'patch-area',
  title: 'area of one patch',
  finds: patchArea,
  by: times(fullLength, patchWidth),
  second: true,
  because: 'The lane is a strip of one width, so each foot along it adds the same area.',
  sources: [armyPaving('plant-mix example')],
  examples: [
    {
      given: { 'full-length': [300, 'ft'], 'patch-width': [12, 'ft'] },
      finds: [3600, 'ft2'],
      source: 'worked by hand: 300 × 12',
    },
    {
      given: { 'full-length': [650, 'ft'], 'patch-width': [110, 'ft'] },
      finds: [71500, 'ft2'],
      source: 'Subcourse EN5459 (US Army), plant-mix example: 650 × 110 ft',
    },
  ],
});
