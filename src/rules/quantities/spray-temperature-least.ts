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
    'what+temperature|temp tack|spray|shoot|ss-1|ss-1h|css-1|css-1h|rs-1|crs-1|crs-2|ss1|ss1h|css1|css1h|crs1|crs2|rc-70|rc70|rc-250|rc250|mc-70|mc70 -#temperature -air -road -surface',
    'how+hot|warm tack|cutback|spray -mix -mat',
    'heat tack|cutback|ss-1|ss-1h|css-1|css-1h|rs-1|crs-1 -#temperature -@why',
  ],
  beside: ['spray-temperature-most'],
  usedAt: ['tack'],
  caution:
    'Heat it parked and level, with the heating tubes covered. A cutback is sprayed hotter than the heat at which its vapor flashes: no flame, no smoking.',
});
