import { minus } from '../../calc/expression.ts';
import stickAfter from '../quantities/stick-after.ts';
import stickBefore from '../quantities/stick-before.ts';
import tackUsed from '../quantities/tack-used.ts';
import { relation } from '../shapes.ts';
import { navyBasic } from '../sources-craft.ts';

export default relation({
  id: 'tack-used',
  title: 'tack used, from two sticks',
  finds: tackUsed,
  by: minus(stickBefore, stickAfter),
  because: 'What is gone from the tank is on the road.',
  sources: [navyBasic('distributor formulas, p. 492 of the web edition')],
  examples: [
    {
      given: { 'stick-before': [1240, 'gal'], 'stick-after': [1118, 'gal'] },
      finds: [122, 'gal'],
      source: 'worked out by hand',
    },
  ],
});
