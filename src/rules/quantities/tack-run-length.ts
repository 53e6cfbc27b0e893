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
    'how-far tank',
    'how-far tack|distributor|gallon',
    'tank go|last|cover|run',
    'how-far #volume',
    'how-far bar -#flow',
    'how+long shot|spray #volume',
    'shot|run #volume -used -rate',
    'distance tank|bar|#volume -#flow',
    'how-far tank|till empty|out -#flow',
    'how-far empty -#flow',
    'tank|gallon|#volume how-far #rate',
  ],
  alsoCalled: ['feet to a tank', 'shot length'],
  bare: false,
  asks: 'How far does one tank go?',
  beside: ['tank-volume', 'tack-rate', 'tank-time'],
  usedAt: ['tack'],
});
