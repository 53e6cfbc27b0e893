import { times } from '../../calc/expression.ts';
import dilution from '../quantities/dilution.ts';
import emulsionVolume from '../quantities/emulsion-volume.ts';
import tackVolume from '../quantities/tack-volume.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'emulsion-volume',
  title: 'original emulsion in a diluted tank',
  finds: emulsionVolume,
  by: times(tackVolume, dilution),
  because: 'The rest is water.',
  sources: [geometry],
  examples: [
    {
      given: { 'tack-volume': [1200, 'gal'], dilution: [50, '%'] },
      finds: [600, 'gal'],
      source: 'one part water to one of emulsion is half',
    },
  ],
});
