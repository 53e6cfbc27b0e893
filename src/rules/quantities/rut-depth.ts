import { quantity } from '../shapes.ts';
import { armyPci } from '../sources-work.ts';

export default quantity({
  id: 'rut-depth',
  title: 'depth of the rut',
  dimension: 'length',
  units: { us: 'in', metric: 'mm' },
  rounding: { us: 'eighths', metric: 'whole' },
  because:
    'The largest gap under a straightedge laid across; humps beside the rut lift the edge and make it read deeper than what is to be filled.',
  sources: [armyPci('appendix B, p. B-20')],
  roles: { after: ['deep', 'depth', 'rut', 'middle', 'center'], before: ['rut', 'rutted', 'depth', 'deep'] },
  setting: ['rut', 'rutted'],
  bare: { us: 'in', metric: 'mm' },
  question: {
    text: 'How deep is the rut under the straightedge?',
    ease: 1,
    choices: [
      { number: 0.5, unit: 'in' },
      { number: 1, unit: 'in' },
      { number: 1.5, unit: 'in' },
    ],
  },
  plausible: { min: { number: 0.1, unit: 'in' }, max: { number: 8, unit: 'in' } },
  caution: 'Depths are read with the lane protected, never alone, and never with a straightedge in live traffic.',
});
