import { quantity } from '../shapes.ts';
import { napa } from '../sources-craft.ts';

export default quantity({
  id: 'order-loads',
  title: 'loads to order',
  dimension: 'count',
  units: { us: '1', metric: '1' },
  rounding: { us: 'up', metric: 'up' },
  counted: true,
  because: 'What is ordered is more than what lies in the patch, and that can be one truck more.',
  sources: [napa('6.2')],
  cues: ['how-many load order', 'how-many+dump -apart', 'order how-many+load|truck'],
  asks: 'How many loads do I order?',
  beside: ['premix-order', 'truck-payload'],
  usedAt: ['order-and-check'],
});
