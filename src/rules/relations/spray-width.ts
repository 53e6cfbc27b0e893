import { plus } from '../../calc/expression.ts';
import patchWidth from '../quantities/patch-width.ts';
import sprayWidth from '../quantities/spray-width.ts';
import { commonPractice, relation } from '../shapes.ts';

export default relation({
  id: 'spray-width',
  title: 'bar as wide as the patch',
  finds: sprayWidth,
  by: plus(patchWidth),
  bothWays: false,
  second: true,
  plan: true,
  because: 'Nozzles are opened for the width of the patch, where nobody says otherwise.',
  sources: [commonPractice],
  note: 'The bar taken as wide as the patch.',
  examples: [{ given: { 'patch-width': [12, 'ft'] }, finds: [12, 'ft'], source: 'common practice' }],
});
