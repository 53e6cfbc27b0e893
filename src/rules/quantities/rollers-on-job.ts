import { commonPractice, quantity } from '../shapes.ts';
import rollersNeeded from './rollers-needed.ts';

export default quantity({
  id: 'rollers-on-job',
  title: 'rollers at work',
  dimension: 'count',
  units: { us: '1', metric: '1' },
  rounding: { us: 'whole', metric: 'whole' },
  because: 'Rollers that really follow the blade, each with its own lanes.',
  sources: [commonPractice],
  roles: { after: ['roller'] },
  heldAgainst: rollersNeeded,
  plausible: { min: { number: 1, unit: '1' }, max: { number: 12, unit: '1' } },
  question: {
    text: 'How many rollers are at work?',
    ease: 1,
    choices: [
      { number: 1, unit: '1' },
      { number: 2, unit: '1' },
    ],
  },
  beside: ['rolling-rate-all'],
  usedAt: ['roll-lift'],
});
