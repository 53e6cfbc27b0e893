import { cutbackGrades, emulsionGrades } from '../grades.ts';
import { quantity } from '../shapes.ts';
import { navyBasic, virginia } from '../sources-craft.ts';
import waste from './waste.ts';

export default quantity({
  id: 'tack-volume',
  title: 'tack needed',
  dimension: 'volume',
  units: { us: 'gal', metric: 'L' },
  rounding: { us: 'up', metric: 'up' },
  because: 'So much on every square yard, times the square yards.',
  sources: [navyBasic('distributor formulas, p. 492 of the web edition'), virginia('ch. 8, HMA-8')],
  cues: [
    'how-many+gallon -water -tank -used -paint -stripe|striping|striped|thermoplastic',
    'gallon tack -water -tank',
    'how-many tack -water',
    `how-many ${[...emulsionGrades, ...cutbackGrades].join('|')} -water -ton -#mass`,
    'tack need -water',
    'tack -water -rate -residual -what+tack -mean -define -cutback+tack',
    'gallon -water -tank -rate -paint -stripe|striping|striped',
    '#rate|#number+residual #length|#number|patch|lane -rate -residue -spray|shoot|shot -@check',
    '#rate|#number+residual #area -rate -residue -spray|shoot|shot -@check',
    'gallon tack coat #length',
    'gallon coat #length',
    'how-many|gallon oil -leak -engine -hydraulic -mix -#ratio -water',
    'distributor #number rate|wide|long -how-fast -speed -#flow -#volume -tank',
    'distributor #length -how-fast -speed -#flow -#volume -tank',
    'tank|#volume @check #length -how-far -how-fast',
    'tank|#volume|tack @check #number|#area|patch|lane|road -how-far -how-fast -ton -#temperature -#mass -used -rate -residual -wet -black -brown -set -broke -broken -break',
  ],
  alsoCalled: ['gallons of tack'],
  roles: { after: ['tack', 'spray', 'shoot', 'shot'], before: ['tack', 'spray', 'put', 'shoot', 'shot'] },
  adds: waste,
  bare: false,
  plausible: { min: { number: 0.25, unit: 'gal' }, max: { number: 50000, unit: 'gal' } },
  asks: 'How many gallons of tack?',
  beside: ['tack-rate', 'tack-area', 'tack-order'],
  usedAt: ['order-and-check', 'tack'],
  note: 'Each coat over the whole patch; nothing added for loss.',
  caution: 'Hot and slick: face shield on, traffic kept off it, drains covered; read the safety data sheet.',
});
