import { quantity } from '../shapes.ts';
import { napa } from '../sources-craft.ts';

export default quantity({
  id: 'load-time',
  title: 'loading, ticket and tarp',
  dimension: 'time',
  units: { us: 'min', metric: 'min' },
  rounding: { us: 'whole', metric: 'whole' },
  because: 'From pulling up at the plant to driving off.',
  sources: [napa('6.2')],
  roles: { after: ['load', 'loading', 'plant'], before: ['load', 'loading'] },
  setting: ['haul', 'cycle', 'trip', 'plant'],
  bare: { us: 'min', metric: 'min' },
  question: {
    text: 'How long does loading take, ticket and tarp included?',
    ease: 3,
    choices: [
      { number: 5, unit: 'min' },
      { number: 8, unit: 'min' },
      { number: 12, unit: 'min' },
    ],
  },
  plausible: { min: { number: 0.5, unit: 'min' }, max: { number: 180, unit: 'min' } },
  beside: ['cycle-time'],
});
