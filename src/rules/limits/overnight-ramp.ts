import overnightState from '../choices/overnight-state.ts';
import endTaperRatio from '../quantities/end-taper-ratio.ts';
import { limit } from '../shapes.ts';
import { everett } from '../sources-craft.ts';

export default limit({
  id: 'overnight-ramp',
  title: 'slope of a ramp left for the night',
  underRule: 'overnight',
  on: endTaperRatio,
  // 20 to 1 is 20 in a run for each inch.
  min: { number: 20 / 12, unit: 'ft/in' },
  breaks: 'caution',
  besideRule: 'overnight',
  when: [{ choice: overnightState, is: ['ramped'] }],
  because: 'A steep ramp throws a car and breaks under the wheels.',
  sources: [everett('SP-63, 26 March 2025, 5-04.3(12)A1: a wedge 20 to 1 over heavy paper')],
  cues: [
    'ramp long|short|steep|flat @check -#length -how-many -how-far',
    'ramp ratio|slope|long @check overnight|night|tonight',
  ],
  text: {
    ok: '{on} is flat enough for the night.',
    caution: '{on} is steeper than the {limit} of a 20 to 1 ramp.',
    cannotTell: 'Tell me how many feet the ramp runs for each inch; {limit} is 20 to 1.',
  },
  fix: 'Make the ramp longer, over paper, so that it comes away clean.',
  examples: {
    holds: { 'end-taper-ratio': [3, 'ft/in'], 'overnight-state': 'ramped' },
    boundary: { 'end-taper-ratio': [20 / 12, 'ft/in'], 'overnight-state': 'ramped' },
    breaks: { 'end-taper-ratio': [1, 'ft/in'], 'overnight-state': 'ramped' },
    cannotTell: { 'overnight-state': 'ramped' },
    also: [{ facts: { 'end-taper-ratio': [1, 'ft/in'], 'overnight-state': 'closed' }, is: 'not-applicable' }],
  },
});
