import { minus } from '../../calc/expression.ts';
import stickAfter from '../quantities/stick-after.ts';
import tackUsed from '../quantities/tack-used.ts';
import tankVolume from '../quantities/tank-volume.ts';
import { relation } from '../shapes.ts';
import { navyBasic } from '../sources-craft.ts';

export default relation({
  id: 'tack-used-from-tank',
  title: 'tack used, from what was in the tank and what is left',
  finds: tackUsed,
  by: minus(tankVolume, stickAfter),
  because: 'What is gone from the tank is on the road.',
  sources: [navyBasic('distributor formulas, p. 492 of the web edition')],
  examples: [
    {
      given: { 'tank-volume': [1200, 'gal'], 'stick-after': [980, 'gal'] },
      finds: [220, 'gal'],
      source: 'worked out by hand',
    },
  ],
});
