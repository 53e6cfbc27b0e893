import { manual } from '../manual.ts';
import { quantity } from '../shapes.ts';

export default quantity({
  id: 'flagger-sight',
  title: 'distance at which drivers see the flagger',
  dimension: 'length',
  units: { us: 'ft', metric: 'm' },
  rounding: { us: 'whole', metric: 'tenth' },
  because: 'A flagger seen too late is a flagger who jumps.',
  sources: [manual('section 6D.06')],
  roles: { after: ['sight', 'view', 'visible', 'see'], before: ['see', 'sight', 'visible', 'view'] },
  setting: ['flagger'],
  bare: false,
  question: {
    text: 'How far off do drivers first see the flagger?',
    ease: 1,
    choices: [
      { number: 250, unit: 'ft' },
      { number: 360, unit: 'ft' },
      { number: 495, unit: 'ft' },
    ],
  },
  plausible: { min: { number: 10, unit: 'ft' }, max: { number: 3, unit: 'mi' } },
});
