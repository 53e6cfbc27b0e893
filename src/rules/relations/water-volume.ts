import { minus } from '../../calc/expression.ts';
import emulsionVolume from '../quantities/emulsion-volume.ts';
import tackVolume from '../quantities/tack-volume.ts';
import waterVolume from '../quantities/water-volume.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'water-volume',
  title: 'water in a diluted tank',
  finds: waterVolume,
  by: minus(tackVolume, emulsionVolume),
  because: 'What is not original emulsion.',
  sources: [geometry],
  examples: [
    {
      given: { 'tack-volume': [900, 'gal'], 'emulsion-volume': [600, 'gal'] },
      finds: [300, 'gal'],
      source: 'two parts emulsion and one of water',
    },
  ],
});
