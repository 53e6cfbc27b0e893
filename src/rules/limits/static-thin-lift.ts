import drumMode from '../choices/drum-mode.ts';
import liftThickness from '../quantities/lift-thickness.ts';
import { commonPractice, limit } from '../shapes.ts';
import { ncatForum } from '../sources-craft.ts';

export default limit({
  id: 'static-thin-lift',
  title: 'no vibration on a thin lift',
  on: liftThickness,
  breaks: 'caution',
  min: { number: 1, unit: 'in' },
  strict: true,
  cases: [
    { when: [{ choice: drumMode, is: ['vibrating'] }] },
    {
      when: [{ choice: drumMode, is: ['static'] }],
      min: { number: 0, unit: 'in' },
      text: { ok: 'Rolled static, which suits a lift of any thickness.', cannotTell: 'Tell me how thick the lift is.' },
    },
  ],
  because: 'A shaking drum bounces off what lies under a thin lift: it breaks stone and loosens the mat.',
  sources: [ncatForum('Florida: static rolling on layers of 1 in'), commonPractice],
  cues: [
    'why vibrator|vibe|vibratory|vibrate|vibration|static|shaker off|shut|thin|lift',
    'vibrate|vibration|vibrator|vibe|vibratory @check',
    'vibrate|vibration|vibe on|off',
    'static|vibrate lift',
    'why static|vibrate|vibration',
    'why vibrate|vibration thin|lift|inch|no',
    'vibrate|vibration|vibrator|vibe|vibratory thin|inch|lift',
  ],
  text: {
    ok: '{on} is thick enough to be vibrated, while it is hot.',
    caution: '{on} is too thin to vibrate: static only up to {limit}, that figure included.',
    cannotTell:
      'Tell me how thick the lift is and whether the drum is vibrating. On a lift of {limit} or less it is off.',
  },
  fix: 'Turn the vibration off and roll static.',
  examples: {
    holds: { 'lift-thickness': [2, 'in'], 'drum-mode': 'vibrating' },
    boundary: { 'lift-thickness': [1, 'in'], 'drum-mode': 'static' },
    breaks: { 'lift-thickness': [0.75, 'in'], 'drum-mode': 'vibrating' },
    cannotTell: { 'lift-thickness': [1, 'in'] },
    also: [
      { facts: { 'lift-thickness': [1, 'in'], 'drum-mode': 'vibrating' }, is: 'caution' },
      { facts: { 'drum-mode': 'vibrating' }, is: 'cannot-tell' },
    ],
  },
});
