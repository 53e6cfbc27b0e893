import { quantity } from '../shapes.ts';
import { everett } from '../sources-craft.ts';

export default quantity({
  id: 'dilution',
  title: 'original emulsion in the tank',
  dimension: 'ratio',
  units: { us: '%', metric: '%' },
  rounding: { us: 'whole', metric: 'whole' },
  because:
    'Water added in the tank leaves less asphalt in every gallon sprayed: one part water to one of emulsion is half.',
  sources: [everett('5-04.3(4): diluted once, at most one part water to one of emulsion')],
  cues: [
    'what|how-many dilute -water',
    'how+dilute',
    'dilute -water -what -where -how-many -spray|shoot|shot -rate -residual -set',
  ],
  alsoCalled: ['cut with water', 'watered down', '1:1'],
  roles: {
    after: ['dilute', 'dilution', 'strength', 'original'],
    before: ['dilute', 'dilution', 'cut', 'mixed'],
  },
  setting: ['dilute', 'dilution', 'cut', 'mixed', 'water', 'strength', 'original', 'undiluted', 'straight', '#parts'],
  parts: 'share',
  shareOf: ['tack', 'emulsion', 'oil', 'original'],
  question: { text: 'How was it cut: how many parts water to one part emulsion?', ease: 1, choices: [] },
  spokenOf: [
    'dilute -not',
    'dilution',
    'cut tack|half',
    'water tack|distributor|add|part how-many|what|rate -wet -rain -puddle -standing',
  ],
  saidAs: [
    {
      cues: [
        'undiluted -#parts -half -cut',
        'no+water',
        'without+water',
        'not+dilute',
        'not+cut tack|emulsion|residue|bar|spray|shoot -cutback',
        'straight -mix -binder -#parts -half -cut',
      ],
      number: 100,
      unit: '%',
    },
    {
      cues: [
        'half+half',
        'half+water|tack|strength|dilute',
        'water|cut|dilute half -residual+half',
        'cut|dilute even|evenly|equal|equally',
        'equal|even+part water|tack',
      ],
      number: 50,
      unit: '%',
    },
  ],
  bare: false,
  default: { number: 100, unit: '%' },
  plausible: { min: { number: 20, unit: '%' }, max: { number: 100, unit: '%' } },
  beside: ['tack-rate', 'water-volume'],
  usedAt: ['tack'],
  caution: 'Dilute only where the buyer allows it, once: water into the emulsion, never into cutback or hot asphalt.',
});
