import { quantity } from '../shapes.ts';
import { navyBasic } from '../sources-craft.ts';

export default quantity({
  id: 'tack-rate',
  title: 'tack as sprayed',
  dimension: 'rate',
  units: { us: 'gal/yd2', metric: 'L/m2' },
  rounding: { us: 'hundredth', metric: 'hundredth' },
  because: 'The bar puts down water and asphalt together, so more is sprayed than stays.',
  sources: [
    navyBasic('distributor formulas, p. 492 of the web edition'),
    {
      document: 'trade article on tack rates',
      place: '0.04 and 0.06 residual at two thirds: 0.06 and 0.09',
      seen: 'read',
    },
  ],
  cues: [
    'tack+rate -residual',
    'spray|shoot|shot+rate -residual',
    'what|how-many spray|shoot|shot -gallon',
    'what spray|shoot|shot ?residue ?residual ?leave -gallon',
    'rate #volume -#temperature -order',
    'rate gallon -#temperature',
    'rate stick|strapped|dip|used',
    'stick before|after|start|end rate',
    'bar+rate|setting -how-far -how-fast',
    'what bar ?residual ?residue -how-far -how-fast -wide -width -speed',
    'what|where|how set bar|rate|distributor|pump -how-fast -speed -wide -width -#speed',
    'set bar|distributor #ratio|residual|leave|left -speed',
    'used|sprayed #volume #length|#area -how-far -water -stick -order',
    'hit|meant|aim|target used|#volume',
    'what+rate ?tack ?spray|shoot|shot',
    'how+heavy tack|spray|shoot|shot',
    'pad gain rate',
  ],
  alsoCalled: ['application rate', 'bar rate', 'shot rate', 'spray rate'],
  roles: {
    after: ['rate', 'spray', 'shoot', 'shot', 'bar'],
    before: ['rate', 'spray', 'at', 'bar', 'shoot', 'shot', 'hit', 'apply', 'roa'],
  },
  bare: { us: 'gal/yd2', metric: 'L/m2' },
  question: {
    text: 'What rate is sprayed?',
    ease: 3,
    choices: [
      { number: 0.06, unit: 'gal/yd2' },
      { number: 0.08, unit: 'gal/yd2' },
      { number: 0.1, unit: 'gal/yd2' },
    ],
  },
  plausible: { min: { number: 0.01, unit: 'gal/yd2' }, max: { number: 0.6, unit: 'gal/yd2' } },
  asks: 'What do we shoot?',
  beside: ['tack-residual', 'residue', 'dilution', 'tack-volume'],
  usedAt: ['tack'],
  note: 'As sprayed, water and all; what stays is the residual.',
  caution: 'Hot and slick: face shield on, traffic kept off it, drains covered; read the safety data sheet.',
});
