import { geometry, quantity } from '../shapes.ts';

export default quantity({
  id: 'patch-area',
  title: 'patch area',
  dimension: 'area',
  units: { us: 'yd2', metric: 'm2' },
  rounding: { us: 'whole', metric: 'whole' },
  because: 'Mix and tack are both figured by the square yard.',
  sources: [geometry],
  cues: [
    'how-many square+yard -pound -gallon',
    'square+yard ?patch -pound -gallon',
    'how-many square+feet',
    'area -warn -advance -tack -spray -shoot -shot -ton -load -hour -grader -roller -cone -sign -zone -taper -device',
    'what area -warn -advance -tack -spray -shoot -shot -ton -load -hour -grader -roller -cone -sign -zone -taper -device',
    'what+square+yard|feet|meter',
    'area patch|hole|job',
  ],
  roles: { after: ['area', 'patch'], before: ['area'] },
  plain: true,
  bare: false,
  question: {
    text: 'What is the area of the patch?',
    ease: 3,
    choices: [
      { number: 100, unit: 'yd2' },
      { number: 200, unit: 'yd2' },
      { number: 400, unit: 'yd2' },
    ],
  },
  plausible: { min: { number: 1, unit: 'ft2' }, max: { number: 1000000, unit: 'yd2' } },
  asks: 'How many square yards is that?',
  beside: ['premix-mass'],
});
