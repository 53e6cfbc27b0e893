import { geometry, quantity } from '../shapes.ts';

export default quantity({
  id: 'edge-thickness',
  title: 'thickness the patch adds at the edge',
  dimension: 'length',
  units: { us: 'in', metric: 'mm' },
  rounding: { us: 'eighths', metric: 'whole' },
  because: 'A patch that stands proud at the edge makes the drop deeper.',
  sources: [geometry],
  roles: { after: ['edge'], before: ['adds', 'raise'] },
  setting: ['add', 'adds', 'raise', 'thickness'],
  bare: false,
  question: {
    text: 'How much thickness does the patch add at the edge?',
    ease: 2,
    choices: [
      { number: 0.5, unit: 'in' },
      { number: 1, unit: 'in' },
    ],
  },
  beside: ['edge-drop-after'],
  usedAt: ['clean-up'],
});
