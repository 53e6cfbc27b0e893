import { geometry, quantity } from '../shapes.ts';

export default quantity({
  id: 'cost-per-ton',
  title: 'cost of a ton in place',
  dimension: 'price',
  units: { us: 'USD/ton', metric: 'USD/t' },
  rounding: { us: 'hundredth', metric: 'hundredth' },
  because: 'All the costs of the job, shared out over the tons laid.',
  sources: [geometry],
  cues: [
    'ton+cost ?place ?how-many -a+ton -at+#number',
    'cost+per+ton',
    'unit+cost',
    'how-many ton cost place|lay|down',
    'how-many ton cost',
    'cost per+ton',
    'per+ton #money',
    'what make|come|work per+ton',
  ],
  bare: false,
  asks: 'What is the cost per ton in place?',
  beside: ['job-cost'],
  usedAt: ['record'],
});
