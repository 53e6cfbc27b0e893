import { commonPractice, quantity } from '../shapes.ts';

export default quantity({
  id: 'crew-size',
  title: 'people on the crew',
  dimension: 'count',
  units: { us: '1', metric: '1' },
  rounding: { us: 'whole', metric: 'whole' },
  because:
    'No published number for blade patching: foreman, blade, roller, tack, drivers, rakers, flaggers; 8 to 12 is usual. Never short the flaggers.',
  sources: [commonPractice],
  roles: {
    after: ['man', 'men', 'people', 'crew', 'hand', 'person', 'worker', 'guy', 'laborer', 'folk', 'fella'],
    before: ['crew'],
  },
  setting: ['guy', 'laborer', 'man', 'men', 'people', 'crew', 'hand', 'person', 'worker'],
  question: {
    text: 'How many people are on the crew?',
    ease: 1,
    choices: [
      { number: 8, unit: '1' },
      { number: 10, unit: '1' },
      { number: 12, unit: '1' },
    ],
  },
  plausible: { min: { number: 1, unit: '1' }, max: { number: 80, unit: '1' } },
  beside: ['labor-cost'],
});
