import { plus, times } from '../../calc/expression.ts';
import endSpread from '../quantities/end-spread.ts';
import fullLength from '../quantities/full-length.ts';
import patchCount from '../quantities/patch-count.ts';
import patchDepth from '../quantities/patch-depth.ts';
import patchWidth from '../quantities/patch-width.ts';
import premixOrder from '../quantities/premix-order.ts';
import unitWeight from '../quantities/unit-weight.ts';
import waste from '../quantities/waste.ts';
import { commonPractice, relation } from '../shapes.ts';
import { navyAdvanced } from '../sources-craft.ts';

export default relation({
  id: 'premix-order-count',
  title: 'tons to order for several like patches',
  finds: premixOrder,
  by: times(plus(fullLength, times(2, endSpread)), patchWidth, patchDepth, unitWeight, patchCount, plus(1, waste)),
  plan: true,
  keeps: [endSpread, waste, patchCount],
  because: 'Every patch has two ends of its own.',
  sources: [navyAdvanced('p. 8-31: 5 or 10 % for waste and handwork'), commonPractice],
  note: 'For all the patches together, with the mix past both ends of each.',
  examples: [
    {
      given: {
        'full-length': [16, 'ft'],
        'end-spread': [1, 'ft'],
        'patch-width': [9, 'ft'],
        'patch-depth': [2, 'in'],
        'unit-weight': [100, 'lb/yd2/in'],
        'patch-count': [5, '1'],
        waste: [10, '%'],
      },
      finds: [9.9, 'ton'],
      source: 'worked by hand: 18 yd² × 200 lb = 1.8 tons, × 5 = 9, and a tenth',
    },
  ],
});
