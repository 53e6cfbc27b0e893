import { times } from '../../calc/expression.ts';
import tackVolume60 from '../quantities/tack-volume-60.ts';
import tackVolumeFactor from '../quantities/tack-volume-factor.ts';
import tankVolume from '../quantities/tank-volume.ts';
import { relation } from '../shapes.ts';
import { astmVolume } from '../sources-craft.ts';

export default relation({
  id: 'tack-volume-60-tank',
  title: 'gallons at 60 degF, whole tank',
  finds: tackVolume60,
  by: times(tankVolume, tackVolumeFactor),
  bothWays: false,
  second: true,
  plan: true,
  because: 'The factor brings a hot volume to what is bought and paid for.',
  sources: [astmVolume('use of the factors')],
  examples: [
    {
      given: { 'tank-volume': [1000, 'gal'], 'tack-volume-factor': [0.98, '1'] },
      finds: [980, 'gal'],
      source: 'worked out by hand',
    },
  ],
});
