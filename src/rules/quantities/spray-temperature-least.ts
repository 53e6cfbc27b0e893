import { anyGrade } from '../grades.ts';
import { quantity } from '../shapes.ts';
import { ufcFlexible } from '../sources-craft.ts';

export default quantity({
  id: 'spray-temperature-least',
  title: 'coolest the tack is sprayed',
  dimension: 'temperature',
  units: { us: 'degF', metric: 'degC' },
  rounding: { us: 'whole', metric: 'whole' },
  because: 'Cooler, it is too thick to fan out of the nozzles, and comes in strings.',
  sources: [ufcFlexible('table 3-2')],
  cues: [
    'temperature|temp|hot|heat|warm tack|spray|shoot|distributor|cutback -@check -#temperature -air -road -surface -mix',
    `what+temperature|temp tack|spray|shoot|${anyGrade} -#temperature -air -road -surface`,
    'how+hot|warm tack|cutback|spray -mix -mat',
    `heat tack|cutback|${anyGrade} -#temperature -@why -in+heat -leave|left -skip -must|need`,
  ],
  beside: ['spray-temperature-most'],
  usedAt: ['tack'],
  caution:
    'Heat it parked and level, with the heating tubes covered. A cutback is sprayed hotter than the heat at which its vapor flashes: no flame, no smoking.',
});
