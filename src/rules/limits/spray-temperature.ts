import { anyGrade } from '../grades.ts';
import sprayTemperatureLeast from '../quantities/spray-temperature-least.ts';
import sprayTemperatureMost from '../quantities/spray-temperature-most.ts';
import tackTemperature from '../quantities/tack-temperature.ts';
import { limit } from '../shapes.ts';
import { ufcFlexible } from '../sources-craft.ts';

export default limit({
  id: 'spray-temperature',
  title: 'tack sprayed in the heat range of its grade',
  on: tackTemperature,
  min: sprayTemperatureLeast,
  max: sprayTemperatureMost,
  breaks: 'caution',
  because:
    'Too cool it does not fan out, and the bar streaks; too hot an emulsion loses its water, and a cutback its vapor.',
  sources: [ufcFlexible('table 3-2: spraying temperatures by grade')],
  cues: [
    `tack|distributor|tank|cutback|${anyGrade} #temperature @check -air -road -surface -mix -mat`,
    'tack|distributor|cutback|tank|kettle @check hot|cold|warm -mix -mat -air -road -water',
    'spray|shoot #temperature @check tack|oil|cutback',
  ],
  text: {
    ok: '{on} is in the range this grade is sprayed at.',
    caution: '{on} is past {limit}, the end of the range this grade is sprayed at.',
    cannotTell:
      'Tell me the grade on the ticket and how hot the tank is: each grade has its range, and the supplier names it.',
  },
  fix: 'Heat it parked and level with the tubes covered, or let it cool; the range on the ticket decides.',
  examples: {
    holds: { 'tack-temperature': [120, 'degF'], 'tack-grade': 'ss' },
    boundary: { 'tack-temperature': [160, 'degF'], 'tack-grade': 'ss' },
    breaks: { 'tack-temperature': [180, 'degF'], 'tack-grade': 'ss' },
    cannotTell: {},
  },
});
