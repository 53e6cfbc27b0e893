import { geometry, quantity } from '../shapes.ts';

export default quantity({
  id: 'labor-cost',
  title: 'cost of labor',
  dimension: 'money',
  units: { us: 'USD', metric: 'USD' },
  rounding: { us: 'whole', metric: 'whole' },
  because: 'Labor hours times the rate of one person.',
  sources: [geometry],
  cues: [
    'labor|wage people|guy|men|man|hand|crew #time -ton -#mass -equipment',
    'cost+labor|crew',
    'labor|crew+cost',
    'labor people|guy|men|man|hand|crew hour #money|#wage|#number -ton -#mass',
    'wage people|guy|men|man|hand|crew hour',
    'cost labor|crew|guy|men|man hour -ton -#mass -equipment -machine -total',
  ],
  roles: { before: ['labor', 'crew'] },
  setting: ['labor', 'crew'],
  bare: false,
  asks: 'What does the crew cost?',
  beside: ['job-cost'],
});
