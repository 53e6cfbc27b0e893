import { commonPractice, quantity } from '../shapes.ts';
import { navyBasic } from '../sources-craft.ts';

export default quantity({
  id: 'blade-angle',
  title: 'blade angle from square across',
  dimension: 'angle',
  units: { us: 'deg', metric: 'deg' },
  rounding: { us: 'whole', metric: 'whole' },
  because:
    'About 30 for sizing a row; for laying, up to 45, so that the toe runs outside the front wheel. Counted from square across the machine, not from the line of travel.',
  sources: [navyBasic('p. 10-14: about 30 deg for blade mixing'), commonPractice],
  cues: ['what angle blade', 'blade angle -deg', 'angle blade'],
  alsoCalled: ['circle angle', 'moldboard angle'],
  roles: { after: ['angle', 'blade'], before: ['angle', 'at', 'blade', 'turn', 'swung', 'angled', 'set'] },
  bare: { us: 'deg', metric: 'deg' },
  default: { number: 30, unit: 'deg', low: 30, high: 45 },
  plausible: { min: { number: 0, unit: 'deg' }, max: { number: 75, unit: 'deg' } },
  asks: 'What angle for the blade?',
  beside: ['blade-reach', 'blade-passes'],
  usedAt: ['windrow', 'first-lift'],
  note: 'An angle said from the line of travel is 90 less this one.',
});
