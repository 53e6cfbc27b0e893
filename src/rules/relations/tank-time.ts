import { over } from '../../calc/expression.ts';
import pumpRate from '../quantities/pump-rate.ts';
import tankTime from '../quantities/tank-time.ts';
import tankVolume from '../quantities/tank-volume.ts';
import { relation } from '../shapes.ts';
import { navyBasic } from '../sources-craft.ts';

export default relation({
  id: 'tank-time',
  title: 'time one tank lasts',
  finds: tankTime,
  by: over(tankVolume, pumpRate),
  because: 'The pump empties it.',
  sources: [navyBasic('distributor formulas, p. 492 of the web edition')],
  examples: [
    {
      given: { 'tank-volume': [600, 'gal'], 'pump-rate': [40, 'gal/min'] },
      finds: [15, 'min'],
      source: 'worked out by hand',
    },
  ],
});
