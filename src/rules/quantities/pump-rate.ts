import { quantity } from '../shapes.ts';
import { navyBasic, virginia } from '../sources-craft.ts';

export default quantity({
  id: 'pump-rate',
  title: 'pump output',
  dimension: 'flow',
  units: { us: 'gal/min', metric: 'L/min' },
  rounding: { us: 'tenth', metric: 'whole' },
  because: 'What leaves the bar in a minute, all nozzles together.',
  sources: [virginia('ch. 8, HMA-8'), navyBasic('distributor formulas, p. 492 of the web edition')],
  cues: [
    'pump rate|output|set|need|put',
    'how-many|what pump',
    'gallon+minute|min -how-fast -speed',
    'gallon+per+minute|min -how-fast -speed',
    'gpm',
    'what+flow',
  ],
  roles: { after: ['pump'], before: ['pump'] },
  bare: false,
  question: {
    text: 'What does the pump give, in gallons a minute?',
    ease: 3,
    choices: [
      { number: 30, unit: 'gal/min' },
      { number: 40, unit: 'gal/min' },
      { number: 60, unit: 'gal/min' },
    ],
  },
  plausible: { min: { number: 0.5, unit: 'gal/min' }, max: { number: 500, unit: 'gal/min' } },
  beside: ['distributor-speed', 'tack-rate'],
  usedAt: ['tack'],
  enough: 'the-same',
});
