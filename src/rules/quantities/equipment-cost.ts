import { geometry, quantity } from '../shapes.ts';

export default quantity({
  id: 'equipment-cost',
  title: 'cost of equipment',
  dimension: 'money',
  units: { us: 'USD', metric: 'USD' },
  rounding: { us: 'whole', metric: 'whole' },
  because: 'Hours times what all machines cost an hour.',
  sources: [geometry],
  cues: [
    'cost+equipment|machine|iron',
    'equipment|machine|iron+cost',
    'equipment|machine|iron cost -total -crew -labor -ton -#mass -men -guy',
    'equipment|machine|iron #time #number|#wage -total -crew -labor -ton -#mass -men -guy',
  ],
  roles: { before: ['equipment', 'machine'] },
  setting: ['equipment', 'machine'],
  bare: false,
  asks: 'What does the equipment cost?',
  beside: ['job-cost'],
});
