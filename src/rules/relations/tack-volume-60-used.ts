import { times } from '../../calc/expression.ts';
import tackUsed from '../quantities/tack-used.ts';
import tackVolume60 from '../quantities/tack-volume-60.ts';
import tackVolumeFactor from '../quantities/tack-volume-factor.ts';
import { relation } from '../shapes.ts';
import { astmVolume } from '../sources-craft.ts';

export default relation({
  id: 'tack-volume-60-used',
  title: 'gallons at 60 degF, what was sprayed',
  finds: tackVolume60,
  by: times(tackUsed, tackVolumeFactor),
  bothWays: false,
  second: true,
  plan: true,
  because: 'The factor brings a hot volume to what is bought and paid for.',
  sources: [astmVolume('use of the factors')],
  examples: [
    {
      given: { 'tack-used': [500, 'gal'], 'tack-volume-factor': [0.98, '1'] },
      finds: [490, 'gal'],
      source: 'worked out by hand',
    },
  ],
});
