import { times } from '../../calc/expression.ts';
import tackArea from '../quantities/tack-area.ts';
import tackRate from '../quantities/tack-rate.ts';
import tackVolume from '../quantities/tack-volume.ts';
import { relation } from '../shapes.ts';
import { navyBasic, virginia } from '../sources-craft.ts';

export default relation({
  id: 'tack-volume',
  title: 'tack needed',
  finds: tackVolume,
  by: times(tackRate, tackArea),
  because: 'So much on each square yard, times the square yards.',
  sources: [navyBasic('distributor formulas, p. 492 of the web edition'), virginia('ch. 8, HMA-8')],
  examples: [
    {
      given: { 'tack-rate': [0.08, 'gal/yd2'], 'tack-area': [24000, 'ft2'] },
      finds: [640 / 3, 'gal'],
      source: 'worked out by hand: 24 × 1,000 ÷ 9 × 0.08',
    },
  ],
});
