import { quantity } from '../shapes.ts';
import { virginia } from '../sources-craft.ts';

export default quantity({
  id: 'load-area',
  title: 'area a load covers',
  dimension: 'area',
  units: { us: 'yd2', metric: 'm2' },
  rounding: { us: 'whole', metric: 'whole' },
  because: 'A load has so many square yards in it at a given thickness, whatever the shape of the patch.',
  sources: [virginia('ch. 9, p. 9-1')],
  cues: [
    'load cover square|area -#mass',
    'square+yard|feet load -#mass',
    'how-many load cover -#mass',
    'how-many #mass -inch -feet -foot -order -extra -load -truck -more',
    'what #mass -left -need -more -still -at -remaining -price -cost -cover+ton',
  ],
  bare: false,
  asks: 'How much area does a load cover?',
  beside: ['load-length', 'area-per-ton'],
  enough: 'no-larger',
});
