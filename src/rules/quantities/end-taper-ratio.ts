import { quantity } from '../shapes.ts';
import { everett, fromMemory } from '../sources-craft.ts';

export default quantity({
  id: 'end-taper-ratio',
  title: 'run of the end taper for each inch',
  dimension: 'run',
  units: { us: 'ft/in', metric: 'm/mm' },
  rounding: { us: 'tenth', metric: 'thousandth' },
  because:
    "The faster the traffic, the flatter an end must be not to be felt. No published figure is agreed: it is the agency's setting.",
  sources: [
    everett('SP-63, 26 March 2025: temporary ramps 20 to 1'),
    fromMemory('5 to 10 ft an inch on slow streets, 25 to 50 on fast roads'),
  ],
  cues: ['taper ratio|per+inch', 'how-many feet inch taper'],
  roles: { after: ['inch', 'taper'], before: ['ratio', 'at', 'taper'] },
  bare: false,
  question: {
    text: 'How many feet of taper for each inch of thickness?',
    ease: 4,
    choices: [
      { number: 5, unit: 'ft/in' },
      { number: 10, unit: 'ft/in' },
      { number: 25, unit: 'ft/in' },
    ],
  },
  plausible: { min: { number: 0.5, unit: 'ft/in' }, max: { number: 100, unit: 'ft/in' } },
  asks: 'How many feet of taper per inch?',
  beside: ['end-taper-length'],
  usedAt: ['first-lift', 'finish-lift'],
});
