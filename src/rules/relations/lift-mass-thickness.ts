import { times } from '../../calc/expression.ts';
import liftMass from '../quantities/lift-mass.ts';
import liftThickness from '../quantities/lift-thickness.ts';
import patchArea from '../quantities/patch-area.ts';
import unitWeight from '../quantities/unit-weight.ts';
import { relation } from '../shapes.ts';
import { navyAdvanced } from '../sources-craft.ts';

export default relation({
  id: 'lift-mass-thickness',
  title: 'tons in a lift of a thickness that was said',
  finds: liftMass,
  by: times(patchArea, liftThickness, unitWeight),
  bothWays: false,
  second: true,
  plan: true,
  said: [liftThickness],
  because: 'A lift over the whole area is a patch of that depth.',
  sources: [navyAdvanced('p. 8-31')],
  note: 'For a lift of this thickness over the whole area.',
  examples: [
    {
      given: { 'patch-area': [400, 'yd2'], 'lift-thickness': [1, 'in'], 'unit-weight': [110, 'lb/yd2/in'] },
      finds: [22, 'ton'],
      source: 'worked by hand: 400 × 110 ÷ 2,000',
    },
  ],
});
