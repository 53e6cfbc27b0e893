import { quantity } from '../shapes.ts';
import { navyBasic } from '../sources-craft.ts';
import distributorSpeed from './distributor-speed.ts';

export default quantity({
  id: 'roller-speed',
  title: 'roller speed',
  dimension: 'speed',
  units: { us: 'mph', metric: 'km/h' },
  rounding: { us: 'tenth', metric: 'tenth' },
  because: 'A drum that goes fast shoves the mat instead of pressing it.',
  sources: [navyBasic('ch. 11: rolling at 1.5 to 3 mph')],
  cues: ['how-fast roller|roll|rolled', 'roller speed', 'speed roll|roller|drum|rolled'],
  roles: {
    after: ['roll', 'steel', 'drum', 'roller', 'mat'],
    before: ['roller', 'roll', 'drum', 'speed', 'steel', 'wheel'],
  },
  bare: { us: 'mph', metric: 'km/h' },
  default: { number: 2.5, unit: 'mph' },
  plausible: { min: { number: 0.3, unit: 'mph' }, max: { number: 15, unit: 'mph' } },
  asks: 'How fast should the roller go?',
  beside: ['rolling-time'],
  usedAt: ['roll-lift', 'final-roll'],
  saidLike: distributorSpeed,
});
