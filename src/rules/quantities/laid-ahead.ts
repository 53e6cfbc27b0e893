import { commonPractice, quantity } from '../shapes.ts';

export default quantity({
  id: 'laid-ahead',
  title: 'hot lift laid ahead of the roller',
  dimension: 'length',
  units: { us: 'ft', metric: 'm' },
  rounding: { us: 'whole', metric: 'whole' },
  because: 'What lies unrolled is cooling.',
  sources: [commonPractice],
  roles: { after: ['ahead', 'ahead-of'], before: ['ahead', 'ahead-of', 'laid'] },
  setting: ['ahead', 'ahead-of'],
  bare: false,
  question: {
    text: 'How far is the lift laid ahead of the roller?',
    ease: 2,
    choices: [
      { number: 100, unit: 'ft' },
      { number: 200, unit: 'ft' },
      { number: 300, unit: 'ft' },
    ],
  },
  beside: ['hot-section-length'],
  usedAt: ['roll-lift'],
});
