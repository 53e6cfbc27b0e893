import { commonPractice, quantity } from '../shapes.ts';

export default quantity({
  id: 'old-cross-slope',
  title: 'cross slope as it is now',
  dimension: 'ratio',
  units: { us: '%', metric: '%' },
  rounding: { us: 'hundredth', metric: 'hundredth' },
  because: 'A worn or settled lane has lost some of its fall.',
  sources: [commonPractice],
  roles: { after: ['now', 'old'], before: ['from', 'old', 'now'] },
  setting: ['crown', 'slope'],
  bare: false,
  saidAs: [{ cues: ['flat crown|slope', 'no+crown', 'lost crown all'], number: 0, unit: '%' }],
  question: {
    text: 'What is the cross slope now?',
    ease: 3,
    choices: [
      { number: 0.5, unit: '%' },
      { number: 1, unit: '%' },
      { number: 1.5, unit: '%' },
    ],
  },
  plausible: { min: { number: 0, unit: '%' }, max: { number: 12, unit: '%' } },
  beside: ['crown-build'],
  usedAt: ['survey-and-mark'],
});
