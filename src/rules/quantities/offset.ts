import { commonPractice, quantity } from '../shapes.ts';
import patchLength from './patch-length.ts';
import patchWidth from './patch-width.ts';

export default quantity({
  id: 'offset',
  title: 'lane width closed',
  dimension: 'length',
  units: { us: 'ft', metric: 'm' },
  rounding: { us: 'tenth', metric: 'tenth' },
  because: 'How far to the side a driver has to move: the width of the lane or the shoulder closed.',
  sources: [commonPractice],
  cues: ['offset', 'lane+width closed'],
  alsoCalled: ['W', 'lateral shift', 'shoulder width'],
  roles: {
    after: ['lane', 'shoulder', 'offset', 'wide', 'shift'],
    before: ['offset', 'shift', 'shoulder', 'lane', 'width', 'taper'],
  },
  setting: ['l', 'taper', 'shoulder', 'closure', 'closed', 'shift', 'merge', 'offset'],
  insteadOf: {
    of: [patchWidth, patchLength],
    cues: [
      'closed|closure|close|shut lane|shoulder -patch -mix -ton -deep -thick -tack -lift -premix -#mass -#volume',
      'close+off lane|shoulder -patch -mix -ton -deep -thick -tack -lift -premix -#mass -#volume',
    ],
  },
  bare: { us: 'ft', metric: 'm' },
  question: {
    text: 'How wide is the lane or the shoulder that is closed?',
    ease: 1,
    choices: [
      { number: 10, unit: 'ft' },
      { number: 11, unit: 'ft' },
      { number: 12, unit: 'ft' },
    ],
  },
  default: { number: 12, unit: 'ft' },
  plausible: { min: { number: 3, unit: 'ft' }, max: { number: 40, unit: 'ft' } },
});
