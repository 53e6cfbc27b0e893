import { iowa, manual } from '../manual.ts';
import oneLaneLength from '../quantities/one-lane-length.ts';
import { limit } from '../shapes.ts';

export default limit({
  id: 'pilot-car',
  title: 'pilot car on a long stretch',
  on: oneLaneLength,
  max: { number: 1320, unit: 'ft' },
  breaks: 'caution',
  because:
    'On a long stretch drivers lose the thread, speed up, and meet each other or the machines; a pilot car leads them through.',
  sources: [iowa('Design Manual', 'section 9C-3'), manual('section 6E.04, an option, no length given')],
  cues: [
    'pilot+car',
    'pilot need|when',
    'pilot+car #length',
    'need pilot #length @check',
    'no|without|need+pilot',
    'zone|lane #length flagger pilot @check',
    'flagger each+end pilot',
    'no+pilot #length',
  ],
  text: {
    ok: '{on} of one lane is at most the {limit} Iowa works with two flaggers and no pilot car. The federal manual gives no length (may); your agency’s figure wins.',
    caution:
      '{on} of one lane is over the {limit} from which Iowa adds a pilot car. The federal manual gives no length (may); your agency’s figure wins.',
    cannotTell:
      'The federal manual gives no length (may); Iowa adds a pilot car over {limit} of one lane. Tell me how far it is from flagger to flagger.',
  },
  fix: 'Add a pilot car with a flagger at each end, or work a shorter piece at a time.',
  examples: {
    holds: { 'one-lane-length': [960, 'ft'] },
    boundary: { 'one-lane-length': [1320, 'ft'] },
    breaks: { 'one-lane-length': [1500, 'ft'] },
    cannotTell: {},
  },
});
