import { commonPractice, quantity } from '../shapes.ts';
import { napa } from '../sources-craft.ts';

export default quantity({
  id: 'patch-loose',
  title: 'loose depth of the whole patch',
  dimension: 'length',
  units: { us: 'in', metric: 'mm' },
  rounding: { us: 'eighths', metric: 'whole' },
  because: 'The roller packs what the blade leaves: all the lifts together stand this much before rolling.',
  sources: [napa('7.5'), commonPractice],
  cues: ['loose depth patch|whole|all'],
  bare: false,
  asks: 'Loose depth of the whole patch?',
  beside: ['windrow-section-all'],
});
