import { commonPractice, quantity } from '../shapes.ts';
import { ufcRepair } from '../sources-craft.ts';

export default quantity({
  id: 'lift-max',
  title: 'thickest lift',
  dimension: 'length',
  units: { us: 'in', metric: 'mm' },
  rounding: { us: 'eighths', metric: 'whole' },
  because:
    'A roller packs only so deep, and a blade lays a thin lift truer than a thick one; thick lifts shove and stay soft below.',
  sources: [commonPractice, ufcRepair('ch. 7, p. 40: 2 to 3 in for lifts in ruts and depressions')],
  cues: [
    'max|thickest lift',
    'how+thick|deep lift check|max',
    'how+thick|deep check|max lay|put|place|drop one+go|shot|pass|lift|time|pop',
    'max|thickest lay|put|place|blade one|single+go|shot|pass|lift|time|pop',
    'thickest lay',
  ],
  roles: { after: ['max'], before: ['max', 'limit', 'permit', 'let', 'spec'] },
  setting: ['county', 'state', 'agency', 'district', 'spec', 'permit', 'let', 'limit', 'max', 'rule'],
  bare: false,
  default: { number: 1, unit: 'in' },
  plausible: { min: { number: 0.25, unit: 'in' }, max: { number: 6, unit: 'in' } },
  asks: 'How thick can a lift be?',
});
