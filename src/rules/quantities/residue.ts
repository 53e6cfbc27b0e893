import { quantity } from '../shapes.ts';
import { californiaEmulsion, fromMemory } from '../sources-craft.ts';

export default quantity({
  id: 'residue',
  title: 'residue of the emulsion',
  dimension: 'ratio',
  units: { us: '%', metric: '%' },
  rounding: { us: 'tenth', metric: 'tenth' },
  because:
    'An emulsion is part water; only its asphalt stays. The ticket gives the share, by weight; taken by volume it is out by a few per cent at most.',
  sources: [
    californiaEmulsion('table 1: RS-1 55 %, SS-1 and SS-1h 57 %, RS-2 63 %, least'),
    fromMemory('tanks run a little over the least, so 60 % is taken'),
  ],
  cues: [
    'what+residue -spray|shoot|shot -rate',
    'how-many+residue -spray|shoot|shot -rate',
    'residue @check -spray|shoot|shot',
  ],
  alsoCalled: ['residual asphalt content', 'percent residue'],
  roles: { after: ['residue', 'oil', 'mix', 'solid', 'binder', 'bitumen', 'tack'], before: ['residue', 'solid'] },
  bare: false,
  default: { number: 60, unit: '%' },
  plausible: { min: { number: 25, unit: '%' }, max: { number: 100, unit: '%' } },
  beside: ['tack-rate', 'tack-residual'],
  usedAt: ['tack'],
  note: 'Read it off the ticket; least shares are 55 to 65 % by grade.',
});
