import { quantity } from '../shapes.ts';
import { astmVolume, fromMemory } from '../sources-craft.ts';

export default quantity({
  id: 'tack-rate-60',
  title: 'tack as sprayed, at 60 degF',
  dimension: 'rate',
  units: { us: 'gal/yd2', metric: 'L/m2' },
  rounding: { us: 'thousandth', metric: 'hundredth' },
  because: 'A rate read off a hot tank is a little high: the gallons shrink as they cool.',
  sources: [astmVolume('binder and cutback; emulsions are excluded'), fromMemory('emulsion, 0.00025 for each degF')],
  cues: ['rate correct|net #temperature', 'rate 60 #temperature', 'rate #volume #temperature'],
  bare: false,
  beside: ['tack-rate', 'tack-volume-factor'],
  usedAt: ['record'],
});
