import { quantity } from '../shapes.ts';
import { navyAdvanced } from '../sources-craft.ts';

export default quantity({
  id: 'haul-speed',
  title: 'speed loaded',
  dimension: 'speed',
  units: { us: 'mph', metric: 'km/h' },
  rounding: { us: 'whole', metric: 'whole' },
  because: 'The average on the way, stops and towns included: well under what is posted.',
  sources: [navyAdvanced('ch. 4: hauls average 40 to 56 % of the posted speed')],
  roles: {
    after: ['loaded', 'haul', 'out', 'there', 'average', 'going'],
    before: ['haul', 'loaded', 'truck', 'at', 'average'],
  },
  setting: ['haul', 'plant', 'pit', 'cycle', 'trip', 'loaded'],
  bare: { us: 'mph', metric: 'km/h' },
  question: {
    text: 'What speed do the trucks average, loaded?',
    ease: 3,
    choices: [
      { number: 25, unit: 'mph' },
      { number: 35, unit: 'mph' },
      { number: 45, unit: 'mph' },
    ],
  },
  plausible: { min: { number: 2, unit: 'mph' }, max: { number: 75, unit: 'mph' } },
  beside: ['cycle-time'],
});
