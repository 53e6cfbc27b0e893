import tackGrade from '../choices/tack-grade.ts';
import tackKind from '../choices/tack-kind.ts';
import { anyGrade } from '../grades.ts';
import { quantity } from '../shapes.ts';
import { californiaEmulsion, fromMemory } from '../sources-craft.ts';

export default quantity({
  id: 'residue',
  title: 'residue of the tack',
  dimension: 'ratio',
  units: { us: '%', metric: '%' },
  rounding: { us: 'tenth', metric: 'tenth' },
  because:
    'An emulsion is part water and a cutback part solvent; only the asphalt stays. The ticket gives the share: of an emulsion by weight, which taken by volume is out by a few per cent at most; of a cutback by volume.',
  sources: [
    californiaEmulsion('table 1: RS-1 55 %, SS-1 and SS-1h 57 %, RS-2 63 %, least'),
    fromMemory('tanks run a little over the least, so 60 % is taken'),
    fromMemory(
      'AASHTO M 82 and M 81, least by volume: MC-30 50 %, MC-70 and RC-70 55 %, RC-250 65 %, MC-250 67 %, MC-800 and RC-800 75 %',
    ),
  ],
  cues: [
    'what+residue -spray|shoot|shot -rate',
    'how-many+residue -spray|shoot|shot -rate',
    'residue @check -spray|shoot|shot',
    `residue ${anyGrade} -spray|shoot|shot -rate -gallon -residual`,
  ],
  alsoCalled: ['residual asphalt content', 'percent residue'],
  roles: { after: ['residue', 'oil', 'mix', 'solid', 'binder', 'bitumen', 'tack'], before: ['residue', 'solid'] },
  bare: false,
  question: { text: 'What residue is on the ticket, in percent? Or which grade is it?', ease: 2, choices: [] },
  default: { number: 60, unit: '%' },
  // Cutbacks are too unlike for one figure: with no grade and none on the ticket, it is asked for.
  defaultWhen: [
    ...(
      [
        ['mc-30', 50],
        ['mc-70', 55],
        ['rc-70', 55],
        ['rc-250', 65],
        ['mc-250', 67],
        ['mc-800', 75],
        ['rc-800', 75],
      ] as const
    ).map(([grade, number]) => ({
      when: [{ choice: tackGrade, is: [grade] }],
      figure: { number, unit: '%' as const },
    })),
    { when: [{ choice: tackKind, is: ['cutback'] }] },
  ],
  plausible: { min: { number: 25, unit: '%' }, max: { number: 100, unit: '%' } },
  beside: ['tack-rate', 'tack-residual'],
  usedAt: ['tack'],
  note: 'Read it off the ticket; least shares of emulsions are 55 to 65 % by grade.',
});
