import { quantity } from '../shapes.ts';
import { astmVolume, fromMemory, iowaVolume } from '../sources-craft.ts';

export default quantity({
  id: 'tack-volume-factor',
  title: 'volume factor to 60 degF',
  dimension: 'count',
  units: { us: '1', metric: '1' },
  rounding: { us: 'thousandth', metric: 'thousandth' },
  because: 'Liquids swell as they warm; gallons are bought and paid for at 60 degF.',
  sources: [
    astmVolume('binder and cutback; emulsions are excluded'),
    iowaVolume('column A'),
    fromMemory('emulsion, 0.00025 for each degF'),
  ],
  cues: ['factor temperature|volume', 'correct+factor'],
  roles: { before: ['factor'] },
  beside: ['tack-volume-60'],
});
