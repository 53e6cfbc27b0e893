import { quantity } from '../shapes.ts';
import { napa } from '../sources-craft.ts';

export default quantity({
  id: 'unload-time',
  title: 'dumping and cleaning out',
  dimension: 'time',
  units: { us: 'min', metric: 'min' },
  rounding: { us: 'whole', metric: 'whole' },
  because: 'From backing in to pulling away, bed down.',
  sources: [napa('6.2')],
  roles: { after: ['dump', 'unload'], before: ['dump', 'unload'] },
  setting: ['dump', 'unload'],
  bare: { us: 'min', metric: 'min' },
  question: {
    text: 'How long does dumping take?',
    ease: 3,
    choices: [
      { number: 5, unit: 'min' },
      { number: 10, unit: 'min' },
      { number: 15, unit: 'min' },
    ],
  },
  plausible: { min: { number: 0.5, unit: 'min' }, max: { number: 120, unit: 'min' } },
  beside: ['cycle-time'],
  caution: 'One spotter, look up for wires before the bed goes up, bed down before moving.',
});
