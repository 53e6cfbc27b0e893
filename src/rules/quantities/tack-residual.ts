import surface from '../choices/surface.ts';
import { quantity } from '../shapes.ts';
import { everett, fromMemory } from '../sources-craft.ts';

export default quantity({
  id: 'tack-residual',
  title: 'residual tack',
  dimension: 'rate',
  units: { us: 'gal/yd2', metric: 'L/m2' },
  rounding: { us: 'hundredth', metric: 'hundredth' },
  because:
    'What bonds is the asphalt left when the water is gone. A thin film glues; a heavy one lubricates and bleeds, and none at all slips too.',
  sources: [
    everett('5-04.3(4): residual 0.02 to 0.10 gal/yd2 on any surface'),
    fromMemory('rates by surface as commonly taught'),
  ],
  cues: [
    '@after what leave|left|stay|remain -mix -windrow -tank -before -do -home -list -step',
    'residual -share -what+spray|shoot|shot -set -#rate|#number+residual',
    'residual what|how-many -share -what+spray|shoot|shot -set -#length -#area',
    'what|how-many+residual',
    'residual get|left|leave|stay -what+spray|shoot|shot -set',
    'left|stay|remain after+break|broke|broken|water|cure|dry -gallon -ton',
    'left|stay|remain break|broke|broken|cure tack|rate',
    'what left|stay|remain spray|shoot|shot ?residue -tank -gallon -ton -what+spray|shoot|shot',
    'what left break|broke spray|shoot|shot',
    'what left|stay|remain bar|residue -gallon -ton -set -mix',
    'what|how-many left|stay|remain on road|surface|pavement ?residue ?spray|shoot|shot -ton -mix -load -gallon -lift',
  ],
  alsoCalled: ['residual rate', 'asphalt left on the road', 'what stays after the water is gone'],
  roles: { after: ['residual', 'stay', 'remain', 'left'], before: ['leaving', 'residual', 'leave'] },
  shortUnit: { unit: 'gal', for: 'gal/yd2' },
  bare: { us: 'gal/yd2', metric: 'L/m2' },
  default: { number: 0.05, unit: 'gal/yd2', last: true },
  defaultWhen: [
    { when: [{ choice: surface, is: ['fresh-lift'] }], figure: { number: 0.03, unit: 'gal/yd2' } },
    { when: [{ choice: surface, is: ['cut'] }], figure: { number: 0.06, unit: 'gal/yd2' } },
  ],
  plausible: { min: { number: 0.005, unit: 'gal/yd2' }, max: { number: 0.6, unit: 'gal/yd2' } },
  asks: 'How much residual is left?',
  beside: ['tack-rate'],
  usedAt: ['tack'],
});
