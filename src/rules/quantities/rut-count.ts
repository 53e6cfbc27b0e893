import { commonPractice, quantity } from '../shapes.ts';

export default quantity({
  id: 'rut-count',
  title: 'ruts',
  dimension: 'count',
  units: { us: '1', metric: '1' },
  rounding: { us: 'whole', metric: 'whole' },
  because: 'A lane has two wheel paths, and both are usually worn.',
  sources: [commonPractice],
  roles: { after: ['rut', 'wheel', 'path', 'wheelpath', 'track'] },
  setting: ['rut', 'rutted'],
  saidAs: [{ cues: ['both wheelpath|rut|track', 'both+wheel'], number: 2, unit: '1' }],
  question: {
    text: 'How many ruts: one wheel path, or both?',
    ease: 6,
    choices: [
      { number: 1, unit: '1' },
      { number: 2, unit: '1' },
    ],
  },
  plausible: { min: { number: 1, unit: '1' }, max: { number: 50, unit: '1' } },
});
