import { quantity } from '../shapes.ts';
import { navyBasic, virginia } from '../sources-craft.ts';

export default quantity({
  id: 'tack-run-length',
  title: 'length one tank covers',
  dimension: 'length',
  units: { us: 'ft', metric: 'm' },
  rounding: { us: 'whole', metric: 'whole' },
  because: 'What the tank holds, over what every foot of road takes.',
  sources: [navyBasic('distributor formulas, p. 492 of the web edition'), virginia('ch. 9, p. 9-1')],
  cues: [
    'how+long|far run #volume|tank|gallon -min -minute',
    '#volume make|cover run|far|long',
    'how-far tank -min -minute -hour -ton -#flow',
    'how-far tack|distributor|gallon -min -minute -hour -ton',
    'how-far tack+truck|distributor gallon|#volume',
    'tank go|cover|run|reach|last -time -minute -hour -pump -stick -read -#flow',
    'how-far #volume -min -minute -hour -used -#flow',
    'how-far bar|empty|dry -min -minute -hour -#flow',
    'how-far #volume|tank|tack|bar #rate -min -minute -hour',
    'distance|footage|station|mile|feet tank|bar|distributor|#volume -min -minute -hour -#flow -area -used -#area',
    'how+long shot|pull|spray|shoot tank|bar|#volume|#rate -min -minute ',
    'shot|pull length|distance|long|#volume -used -rate -min -minute -before -after',
    'feet|foot|ft+per|to|from|on+tank|tankful|tankload',
    'road|lane cover|get|do|make tank|#volume tack|tank|bar|spray|shoot|shot -used',
  ],
  alsoCalled: ['feet to a tank', 'shot length'],
  bare: false,
  asks: 'How far does one tank go?',
  beside: ['tank-volume', 'tack-rate', 'tank-time'],
  usedAt: ['tack'],
  enough: 'no-larger',
});
