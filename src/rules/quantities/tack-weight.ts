import { quantity } from '../shapes.ts';
import { fromMemory } from '../sources-craft.ts';

export default quantity({
  id: 'tack-weight',
  title: 'weight of the tack',
  dimension: 'density',
  units: { us: 'lb/gal', metric: 'kg/L' },
  rounding: { us: 'hundredth', metric: 'hundredth' },
  because: 'Emulsion is a little heavier than water; cutbacks are lighter.',
  sources: [fromMemory('emulsion about 8.4 lb/gal, cutback 7.8 to 7.9, paving asphalt 8.5 to 8.6')],
  cues: ['tack|gallon weigh', 'weight tack|gallon'],
  roles: { after: ['tack'], before: ['weighs', 'tack'] },
  setting: ['tack', 'gallon'],
  bare: false,
  default: { number: 8.4, unit: 'lb/gal' },
  plausible: { min: { number: 7, unit: 'lb/gal' }, max: { number: 9.5, unit: 'lb/gal' } },
  beside: ['tack-mass'],
});
