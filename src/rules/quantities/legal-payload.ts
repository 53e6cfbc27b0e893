import { quantity } from '../shapes.ts';
import { federalWeights } from '../sources-craft.ts';

export default quantity({
  id: 'legal-payload',
  title: 'legal load of the truck',
  dimension: 'mass',
  units: { us: 'ton', metric: 't' },
  rounding: { us: 'tenth', metric: 'tenth' },
  because: 'Law and postings weigh the whole truck: what is left of that after the empty truck may be mix.',
  sources: [federalWeights('axle and gross weights')],
  cues: [
    'payload limit',
    'how-many carry|haul truck bridge|post|posted',
    'what payload limit',
    'check truck carry how-many|what',
    'empty|tare gross|post|posted ?carry ?load ?haul ?truck',
    'how-many|what haul|carry|load|put gross|tare',
    'how-many|what haul|carry|load|put|hold truck empty #mass|#number -left',
  ],
  roles: {
    after: ['payload'],
    beside: ['truck'],
    before: ['legally', 'payload', 'limit', 'license', 'rated', 'capacity', 'licensed'],
  },
  bare: false,
  bareTold: { us: 'ton', metric: 't' },
  question: {
    text: 'What load may the truck legally carry?',
    ease: 2,
    choices: [
      { number: 10, unit: 'ton' },
      { number: 12, unit: 'ton' },
      { number: 15, unit: 'ton' },
    ],
  },
  plausible: { min: { number: 0.5, unit: 'ton' }, max: { number: 35, unit: 'ton' } },
  asks: 'What is the payload limit?',
  beside: ['posted-weight', 'truck-tare'],
});
