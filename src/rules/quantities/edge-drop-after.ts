import { geometry, quantity } from '../shapes.ts';

export default quantity({
  id: 'edge-drop-after',
  title: 'drop-off after the patch',
  dimension: 'length',
  units: { us: 'in', metric: 'mm' },
  rounding: { us: 'eighths', metric: 'whole' },
  because: 'The patch adds its own thickness to the drop that was there.',
  sources: [geometry],
  cues: ['drop after patch|lay', 'drop patch add'],
  bare: false,
  asks: 'How deep is the drop after the patch?',
  beside: ['edge-drop'],
  usedAt: ['clean-up'],
});
