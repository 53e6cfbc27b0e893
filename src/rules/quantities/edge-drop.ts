import { commonPractice, quantity } from '../shapes.ts';
import { safetyEdge } from '../sources-craft.ts';

export default quantity({
  id: 'edge-drop',
  title: 'drop-off at the edge',
  dimension: 'length',
  units: { us: 'in', metric: 'mm' },
  rounding: { us: 'eighths', metric: 'whole' },
  because: 'A wheel that drops off climbs back with a jerk that can carry it across the road.',
  sources: [safetyEdge('edge drop-off'), commonPractice],
  roles: {
    after: ['drop', 'lower', 'lip', 'low', 'dropoff'],
    before: ['drop', 'dropoff', 'low', 'lip', 'edge', 'shoulder'],
  },
  bare: { us: 'in', metric: 'mm' },
  question: {
    text: 'How deep is the drop at the edge?',
    ease: 1,
    choices: [
      { number: 1, unit: 'in' },
      { number: 2, unit: 'in' },
      { number: 3, unit: 'in' },
    ],
  },
  plausible: { min: { number: 0.1, unit: 'in' }, max: { number: 36, unit: 'in' } },
  beside: ['edge-drop-after'],
  usedAt: ['survey-and-mark', 'clean-up'],
});
