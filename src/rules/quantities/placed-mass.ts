import { commonPractice, quantity } from '../shapes.ts';
import premixMass from './premix-mass.ts';

export default quantity({
  id: 'placed-mass',
  title: 'mix put down',
  dimension: 'mass',
  units: { us: 'ton', metric: 't' },
  rounding: { us: 'tenth', metric: 'tenth' },
  because: 'Tickets added up: what has gone into the patch so far.',
  sources: [commonPractice],
  roles: {
    after: ['went', 'place', 'use', 'down', 'laid', 'put', 'used'],
    before: ['went', 'put', 'down', 'place', 'laid', 'lay', 'use', 'dump', 'used'],
  },
  setting: ['went', 'put', 'place', 'laid', 'lay', 'use', 'dump', 'down', 'yield'],
  summed: ['dump', 'put', 'laid', 'drop', 'spread'],
  bare: false,
  question: {
    text: 'How many tons have gone down so far?',
    ease: 2,
    choices: [
      { number: 15, unit: 'ton' },
      { number: 30, unit: 'ton' },
      { number: 45, unit: 'ton' },
    ],
  },
  plausible: { min: { number: 0.1, unit: 'ton' }, max: { number: 20000, unit: 'ton' } },
  saidLike: premixMass,
});
