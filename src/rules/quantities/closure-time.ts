import { californiaManual } from '../manual.ts';
import { quantity } from '../shapes.ts';

export default quantity({
  id: 'closure-time',
  title: 'time the road is closed both ways',
  dimension: 'time',
  units: { us: 'min', metric: 'min' },
  rounding: { us: 'whole', metric: 'whole' },
  because: 'Nobody passes at all, in either direction.',
  sources: [californiaManual('Typical Application 13')],
  roles: { after: ['close', 'closed', 'closure', 'shut'], before: ['close', 'closed', 'shut'] },
  setting: ['close', 'closed', 'closure', 'shut'],
  bare: false,
  question: {
    text: 'For how long is the road closed both ways?',
    ease: 1,
    choices: [
      { number: 5, unit: 'min' },
      { number: 10, unit: 'min' },
      { number: 20, unit: 'min' },
    ],
  },
  plausible: { min: { number: 0.1, unit: 'min' }, max: { number: 12, unit: 'h' } },
});
