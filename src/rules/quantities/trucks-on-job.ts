import { commonPractice, quantity } from '../shapes.ts';
import trucksNeeded from './trucks-needed.ts';

export default quantity({
  id: 'trucks-on-job',
  title: 'trucks on the job',
  dimension: 'count',
  units: { us: '1', metric: '1' },
  rounding: { us: 'whole', metric: 'whole' },
  because: 'The trucks that are really hauling.',
  sources: [commonPractice],
  roles: { after: ['truck'], before: [] },
  setting: ['truck'],
  heldAgainst: trucksNeeded,
  plausible: { min: { number: 1, unit: '1' }, max: { number: 60, unit: '1' } },
  question: {
    text: 'How many trucks are hauling?',
    ease: 2,
    choices: [
      { number: 2, unit: '1' },
      { number: 3, unit: '1' },
      { number: 4, unit: '1' },
    ],
  },
  beside: ['truck-spacing', 'delivery-rate'],
});
