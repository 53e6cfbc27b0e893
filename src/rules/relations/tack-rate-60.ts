import { times } from '../../calc/expression.ts';
import tackRate from '../quantities/tack-rate.ts';
import tackRate60 from '../quantities/tack-rate-60.ts';
import tackVolumeFactor from '../quantities/tack-volume-factor.ts';
import { relation } from '../shapes.ts';
import { astmVolume } from '../sources-craft.ts';

export default relation({
  id: 'tack-rate-60',
  title: 'rate at 60 degF',
  finds: tackRate60,
  by: times(tackRate, tackVolumeFactor),
  because: 'A rate is gallons too.',
  sources: [astmVolume('use of the factors')],
  examples: [
    {
      given: { 'tack-rate': [0.1, 'gal/yd2'], 'tack-volume-factor': [0.98, '1'] },
      finds: [0.098, 'gal/yd2'],
      source: 'worked out by hand',
    },
  ],
});
