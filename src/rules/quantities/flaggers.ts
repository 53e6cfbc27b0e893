import { manual } from '../manual.ts';
import { quantity } from '../shapes.ts';

export default quantity({
  id: 'flaggers',
  title: 'flaggers on hand',
  dimension: 'count',
  units: { us: '1', metric: '1' },
  rounding: { us: 'whole', metric: 'whole' },
  because: 'One for each end is what the manual says there should be.',
  sources: [manual('section 6E.02')],
  roles: { after: ['flagger'], before: ['flagger'] },
  setting: ['flagger'],
  question: {
    text: 'How many flaggers are there?',
    ease: 4,
    choices: [
      { number: 1, unit: '1' },
      { number: 2, unit: '1' },
      { number: 3, unit: '1' },
    ],
  },
  plausible: { min: { number: 1, unit: '1' }, max: { number: 20, unit: '1' } },
});
