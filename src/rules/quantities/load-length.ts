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
  cues: ['how-far load|ton|truck -apart', 'how-far go|cover|reach -apart', 'feet|foot load', 'how+long load', 'load go|cover|reach|do -how-many'],
  bare: false,
  asks: 'How far does a load go?',
  beside: ['load-area', 'length-per-ton'],
  usedAt: ['spread-premix'],
});
