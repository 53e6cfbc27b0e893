import tackKind from '../choices/tack-kind.ts';
import dilution from '../quantities/dilution.ts';
import { limit } from '../shapes.ts';
import { everett } from '../sources-craft.ts';

export default limit({
  id: 'dilution-once',
  title: 'at most one part water to one of emulsion',
  on: dilution,
  min: { number: 50, unit: '%' },
  breaks: 'caution',
  when: [{ choice: tackKind, is: ['emulsion'] }],
  because: 'Thinner than that it runs off before it breaks, and twice diluted nobody knows what is left.',
  sources: [
    everett('5-04.3(4): diluted once, at most one part water to one of emulsion'),
    {
      document: 'AASHTO M 140, Emulsified Asphalt',
      issuer: 'AASHTO',
      edition: '2018',
      place: "note 2: not without the buyer's approval",
      seen: 'read',
    },
  ],
  cues: ['dilute @check', 'water tack @check', 'cut tack water|thin @check'],
  text: {
    ok: '{on} original emulsion is no thinner than one to one. Only where the buyer allows it.',
    caution: '{on} original emulsion is thinner than one part water to one of emulsion.',
    cannotTell: 'Tell me how many parts of water go to one part of emulsion.',
  },
  fix: 'Add emulsion, or spray it undiluted; water goes into the emulsion, never the other way.',
  examples: {
    holds: { dilution: [75, '%'], 'tack-kind': 'emulsion' },
    boundary: { dilution: [50, '%'], 'tack-kind': 'emulsion' },
    breaks: { dilution: [40, '%'], 'tack-kind': 'emulsion' },
    cannotTell: { 'tack-kind': 'emulsion' },
    also: [{ facts: { dilution: [40, '%'], 'tack-kind': 'cutback' }, is: 'not-applicable' }],
  },
});
