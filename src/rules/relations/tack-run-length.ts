import { over, times } from '../../calc/expression.ts';
import sprayWidth from '../quantities/spray-width.ts';
import tackRate from '../quantities/tack-rate.ts';
import tackRunLength from '../quantities/tack-run-length.ts';
import tankVolume from '../quantities/tank-volume.ts';
import { relation } from '../shapes.ts';
import { navyBasic } from '../sources-craft.ts';

export default relation({
  id: 'tack-run-length',
  title: 'length one tank covers',
  finds: tackRunLength,
  by: over(tankVolume, times(tackRate, sprayWidth)),
  because: 'Each foot of road takes the rate times the width of the bar.',
  sources: [navyBasic('distributor formulas, p. 492 of the web edition')],
  examples: [
    {
      given: { 'tank-volume': [600, 'gal'], 'tack-rate': [0.08, 'gal/yd2'], 'spray-width': [12, 'ft'] },
      finds: [5625, 'ft'],
      source: 'worked out by hand from L = 9 T ÷ (W R): 5,400 ÷ 0.96',
    },
  ],
});
