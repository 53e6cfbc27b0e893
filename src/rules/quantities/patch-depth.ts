import { commonPractice, quantity } from '../shapes.ts';

export default quantity({
  id: 'patch-depth',
  title: 'average compacted depth',
  dimension: 'length',
  units: { us: 'in', metric: 'mm' },
  rounding: { us: 'eighths', metric: 'whole' },
  because:
    'Deep and shallow spots even out in the tons, so tons come from the average; the lifts come from the deepest spot.',
  sources: [commonPractice],
  cues: [
    'how+thick|deep #spread',
    'what+thick|thickness|depth #spread',
    'what depth|thick|thickness -lay -laid -put -lift',
    'how+deep',
  ],
  roles: {
    after: ['total', 'deep', 'depth', 'thick', 'thickness', 'compacted', 'rolled', 'hole', 'average', 'patch', 'spot'],
    before: ['depth', 'deep', 'thickness', 'thick', 'at', 'average'],
  },
  inGroup: 'thinnest',
  plain: true,
  bare: { us: 'in', metric: 'mm' },
  question: {
    text: 'How deep, on average, after rolling?',
    ease: 1,
    choices: [
      { number: 1, unit: 'in' },
      { number: 1.5, unit: 'in' },
      { number: 2, unit: 'in' },
    ],
  },
  plausible: { min: { number: 0.2, unit: 'in' }, max: { number: 12, unit: 'in' } },
  caution: 'Depths are read with the lane protected, never alone, and never with a straightedge in live traffic.',
});
