import { commonPractice, quantity } from '../shapes.ts';

export default quantity({
  id: 'placed-share',
  title: 'share of the mix down before the finish lift',
  dimension: 'ratio',
  units: { us: '%', metric: '%' },
  rounding: { us: 'whole', metric: 'whole' },
  because:
    'The finish lift only levels and closes what lies below it; it cannot make up a patch that is still half empty.',
  sources: [commonPractice],
  roles: { after: ['down', 'place', 'laid', 'mix'], before: ['place', 'down', 'share'] },
  setting: ['finish', 'final', 'last'],
  saidAs: [
    {
      cues: ['a|one|about+third mix|in|down|place -two -#length', 'only third mix|in|down -two -#length'],
      number: 33,
      unit: '%',
    },
    { cues: ['half mix|it|down|place|in -#length', 'half finish|final -#length'], number: 50, unit: '%' },
    { cues: ['quarter mix|down|place -three -#length'], number: 25, unit: '%' },
  ],
  bare: false,
  question: {
    text: 'What share of the mix is down before the finish lift?',
    ease: 6,
    choices: [
      { number: 50, unit: '%' },
      { number: 67, unit: '%' },
      { number: 75, unit: '%' },
    ],
  },
  plausible: { min: { number: 1, unit: '%' }, max: { number: 100, unit: '%' } },
});
