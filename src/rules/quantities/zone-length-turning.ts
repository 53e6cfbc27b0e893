import { geometry, quantity } from '../shapes.ts';

export default quantity({
  id: 'zone-length-turning',
  title: 'sign to sign with room to turn',
  dimension: 'length',
  units: { us: 'ft', metric: 'm' },
  rounding: { us: 'up', metric: 'up' },
  because:
    'A grader and a roller need ground past both ends of the patch; without it they turn in the buffer, which must stay empty.',
  sources: [geometry],
  cues: ['zone turn', 'room turn zone', 'zone room grader|roller', 'whole|total zone turn', 'zone+length turn'],
  bare: false,
  asks: 'Whole zone, with room to turn?',
  beside: ['zone-length', 'work-length'],
});
