import { geometry, quantity } from '../shapes.ts';

export default quantity({
  id: 'material-cost',
  title: 'cost of the mix in place',
  dimension: 'money',
  units: { us: 'USD', metric: 'USD' },
  rounding: { us: 'whole', metric: 'whole' },
  because: 'Tons in place times the price of a ton.',
  sources: [geometry],
  cues: [
    'cost mix',
    'mix cost',
    'how-many cost mix|ton',
    'cost #price',
    '#mass #price',
    'cost #mass -place -per -a',
    '#mass cost ton at',
    'at+#number ton cost -total -job -hour -crew -equipment',
    'mix cost|price|bill #mass',
  ],
  roles: { before: ['mix'] },
  setting: ['cost'],
  bare: false,
  asks: 'What does the mix cost?',
  beside: ['order-cost', 'job-cost'],
  caution: 'Your prices; nothing is assumed.',
});
