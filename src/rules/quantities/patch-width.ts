import { commonPractice, quantity } from '../shapes.ts';

export default quantity({
  id: 'patch-width',
  title: 'patch width',
  dimension: 'length',
  units: { us: 'ft', metric: 'm' },
  rounding: { us: 'tenth', metric: 'tenth' },
  because:
    'Across the road a patch reaches from one tack edge to the other; every foot of it takes mix along the whole length.',
  sources: [commonPractice],
  cues: ['how+wide patch', 'patch+width'],
  roles: { after: ['wide', 'width', 'across', 'lane', 'road', 'patch'], before: ['width', 'wide', 'across'] },
  inGroup: 'next',
  plain: true,
  bare: { us: 'ft', metric: 'm' },
  question: {
    text: 'How wide is the patch?',
    ease: 1,
    choices: [
      { number: 8, unit: 'ft' },
      { number: 10, unit: 'ft' },
      { number: 12, unit: 'ft' },
    ],
  },
  plausible: { min: { number: 1, unit: 'ft' }, max: { number: 60, unit: 'ft' } },
});
