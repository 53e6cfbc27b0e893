import { plus, times } from '../../calc/expression.ts';
import endSpread from '../quantities/end-spread.ts';
import fullLength from '../quantities/full-length.ts';
import patchDepth from '../quantities/patch-depth.ts';
import patchWidth from '../quantities/patch-width.ts';
import premixOrder from '../quantities/premix-order.ts';
import unitWeight from '../quantities/unit-weight.ts';
import waste from '../quantities/waste.ts';
import { commonPractice, relation } from '../shapes.ts';
import { navyAdvanced } from '../sources-craft.ts';

export default relation({
  id: 'premix-order',
  title: 'tons to order for one patch',
  finds: premixOrder,
  by: times(plus(fullLength, times(2, endSpread)), patchWidth, patchDepth, unitWeight, plus(1, waste)),
  second: true,
  plan: true,
  keeps: [endSpread, waste],
  because: 'What is dumped past both ends is bought at full depth, and a share of the whole is lost.',
  sources: [navyAdvanced('p. 8-31: 5 or 10 % for waste and handwork'), commonPractice],
  examples: [
    {
      given: {
        'full-length': [180, 'ft'],
        'end-spread': [0, 'ft'],
        'patch-width': [10, 'ft'],
        'patch-depth': [1, 'in'],
        'unit-weight': [100, 'lb/yd2/in'],
        waste: [10, '%'],
      },
      finds: [11, 'ton'],
      source: 'worked by hand: 200 yd² × 100 = 10 tons, and a tenth',
    },
    {
      given: {
        'full-length': [150, 'ft'],
        'end-spread': [2, 'ft'],
        'patch-width': [12, 'ft'],
        'patch-depth': [1.5, 'in'],
        'unit-weight': [110, 'lb/yd2/in'],
        waste: [5, '%'],
      },
      finds: [17.787, 'ton'],
      source: 'worked by hand: 154 × 12 ÷ 9 × 1.5 × 110 ÷ 2,000 = 16.94, × 1.05',
    },
  ],
});
