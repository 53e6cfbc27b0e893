import { quantity } from '../shapes.ts';
import { navyBasic, virginia } from '../sources-craft.ts';

export default quantity({
  id: 'distributor-speed',
  title: 'speed of the distributor',
  dimension: 'speed',
  units: { us: 'ft/min', metric: 'm/min' },
  rounding: { us: 'whole', metric: 'whole' },
  because: 'The pump gives so much a minute; the slower the truck goes, the more lands on every yard.',
  sources: [virginia('ch. 8, HMA-8'), navyBasic('distributor formulas, p. 492 of the web edition')],
  cues: [
    'how-fast distributor|spray|bar|pump|tack|shoot|shot',
    'how-fast drive',
    'how-fast #flow',
    'speed distributor|spray|bar|shoot|shot|tack|pump',
    'speed #flow',
    '#flow per -pump -tank -how-many+pump',
    '#flow how-far -tank -#volume',
    'feet|foot|ft|meter|metre min|minute bar|#rate|#flow',
    'mph|fpm tack|bar|distributor|pump|#flow|#rate -roller -blade -grader -taper',
    'drive|travel|speed|slow|fast distributor|bar|#rate|#flow -roller -grader -taper -sign',
  ],
  alsoCalled: ['bitumeter speed', 'shooting speed'],
  roles: { after: ['distributor', 'drive'], before: ['driving', 'distributor', 'drive', 'drives'] },
  bare: false,
  plausible: { min: { number: 30, unit: 'ft/min' }, max: { number: 2500, unit: 'ft/min' } },
  question: {
    text: 'How fast does the distributor go?',
    ease: 3,
    choices: [
      { number: 300, unit: 'ft/min' },
      { number: 400, unit: 'ft/min' },
      { number: 500, unit: 'ft/min' },
    ],
  },
  beside: ['pump-rate', 'tack-rate', 'spray-width'],
  usedAt: ['tack'],
  enough: 'the-same',
});
