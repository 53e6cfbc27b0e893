import { quantity } from '../shapes.ts';
import { virginia } from '../sources-craft.ts';

export default quantity({
  id: 'load-length',
  title: 'how far a load goes',
  dimension: 'length',
  units: { us: 'ft', metric: 'm' },
  rounding: { us: 'whole', metric: 'tenth' },
  because: 'The same tons go farther on a narrower or thinner patch.',
  sources: [virginia('ch. 9, p. 9-2')],
  cues: [
    '@after how-far get|go|reach|need|carry -apart -sign -taper -buffer',
    'how-far load|truck -#mass -apart -past -beyond -tack -gallon -#volume',
    'how-far #mass -apart -past -beyond',
    'how-many feet|foot #mass -square -cubic',
    'feet|foot+load',
    'feet|foot|length|far per+ton',
    'feet|foot+ton',
    'how+long load',
    'load cover|reach -#mass -how-many',
    'distance load|cover',
    'distance #mass',
    'load how-far|distance cover|reach|go|goes',
    'feet #mass -order -@check',
    'how-far #mass left|truck -apart -past -beyond',
    'distance -#figure -sight -sign -between',
  ],
  bare: false,
  asks: 'How far does a load go?',
  beside: ['load-area', 'length-per-ton'],
  usedAt: ['spread-premix'],
  enough: 'no-larger',
});
