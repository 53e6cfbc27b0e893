import coneUse from '../choices/cone-use.ts';
import { manual } from '../manual.ts';
import coneHeight from '../quantities/cone-height.ts';
import { limit } from '../shapes.ts';

const slow = { number: 18, unit: 'in' } as const;
const fast = { number: 28, unit: 'in' } as const;

export default limit({
  id: 'cone-height',
  title: 'cones tall enough',
  on: coneHeight,
  breaks: 'caution',
  cases: [
    { when: [{ choice: coneUse, is: ['day-and-slow'] }], min: slow },
    { when: [{ choice: coneUse, is: ['night-or-fast'] }], min: fast },
  ],
  because: 'A low cone drops out of sight at speed and in headlights.',
  sources: [manual('section 6K.03, a standard')],
  cues: [
    'cone big|small|short @check -how-many -spacing -apart',
    'cone size|tall|height|high',
    'how+tall cone',
    'cone #length night|tall|high @check',
    'cone #length @check -apart -spacing -taper -every -along',
    'cone night',
    'cone #length night @check ?work ?check',
    'how+tall|big|high cone|device',
  ],
  text: {
    ok: '{on} is at least the {limit} a cone shall have there.',
    caution: '{on} is lower than the {limit} a cone shall have there.',
    cannotTell: `Cones shall be ${slow.number} ${slow.unit} by day on a low-speed road, ${fast.number} ${fast.unit} at night or on a high-speed road. Tell me which it is and how tall yours are.`,
  },
  fix: 'Change to taller cones; for a night, with the two white bands.',
  examples: {
    holds: { 'cone-height': [28, 'in'], 'cone-use': 'day-and-slow' },
    boundary: { 'cone-height': [18, 'in'], 'cone-use': 'day-and-slow' },
    breaks: { 'cone-height': [12, 'in'], 'cone-use': 'day-and-slow' },
    cannotTell: { 'cone-height': [18, 'in'] },
    also: [
      { facts: { 'cone-height': [28, 'in'], 'cone-use': 'night-or-fast' }, is: 'ok' },
      { facts: { 'cone-height': [18, 'in'], 'cone-use': 'night-or-fast' }, is: 'caution' },
    ],
  },
});
