import { commonPractice, quantity } from '../shapes.ts';

export default quantity({
  id: 'loads-placed',
  title: 'loads put down',
  dimension: 'count',
  units: { us: '1', metric: '1' },
  rounding: { us: 'tenth', metric: 'tenth' },
  because: 'Loads counted at the patch are the quickest tally when the tickets are still in the trucks.',
  sources: [commonPractice],
  roles: { after: ['load', 'used'], before: ['put', 'place', 'dump', 'use', 'down', 'used', 'laid'] },
  setting: ['put', 'place', 'laid', 'use', 'used', 'dump', 'down'],
  question: {
    text: 'How many loads have gone down so far?',
    ease: 8,
    choices: [
      { number: 1, unit: '1' },
      { number: 2, unit: '1' },
      { number: 3, unit: '1' },
    ],
  },
  plausible: { min: { number: 1, unit: '1' }, max: { number: 100, unit: '1' } },
});
