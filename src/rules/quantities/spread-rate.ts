import { quantity } from '../shapes.ts';
import { virginia } from '../sources-craft.ts';

export default quantity({
  id: 'spread-rate',
  title: 'spread rate',
  dimension: 'spread',
  units: { us: 'lb/yd2', metric: 'kg/m2' },
  rounding: { us: 'whole', metric: 'whole' },
  because: 'Weight on each square yard: tickets and a tape give it without anybody digging for a thickness.',
  sources: [virginia('ch. 9, p. 9-1 and 9-2')],
  cues: [
    'spread+rate',
    'pound square+yard -inch',
    'how-many pound yard -inch',
    'how-many pound square',
    'weight per square',
  ],
  roles: { after: ['spread'], before: ['rate', 'spread', 'at'] },
  bare: false,
  plausible: { min: { number: 20, unit: 'lb/yd2' }, max: { number: 1500, unit: 'lb/yd2' } },
  asks: 'How many pounds a square yard is that?',
  beside: ['patch-depth', 'unit-weight'],
  enough: 'the-same',
});
