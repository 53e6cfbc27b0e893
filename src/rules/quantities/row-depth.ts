import { geometry, quantity } from '../shapes.ts';
import { napa } from '../sources-craft.ts';

export default quantity({
  id: 'row-depth',
  title: 'depth the row lays, rolled',
  dimension: 'length',
  units: { us: 'in', metric: 'mm' },
  rounding: { us: 'eighths', metric: 'whole' },
  because: 'The row spread over the width is the loose lift; rolled, it is that less the roll-down.',
  sources: [geometry, napa('7.5')],
  cues: [
    'how+thick|deep windrow',
    'windrow lay|make|give thick|deep|depth',
    'windrow thick|depth',
    'windrow how+thick|deep lay|laid|get|make',
  ],
  bare: false,
  asks: 'How thick will the row lay?',
  beside: ['windrow-section', 'lift-loose'],
  usedAt: ['windrow', 'first-lift'],
});
