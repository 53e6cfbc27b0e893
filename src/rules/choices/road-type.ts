import { manual } from '../manual.ts';
import postedSpeed from '../quantities/posted-speed.ts';
import { choice } from '../shapes.ts';

const inTown = ['urban', 'street'];

export default choice({
  id: 'road-type',
  title: 'kind of road',
  because:
    'Signs stand as far out as the speed and the surroundings ask: 500 ft of warning is enough on a county road and far too little on a freeway. What counts as low speed in town is the agency to say.',
  sources: [manual('Table 6B-1')],
  options: [
    {
      id: 'expressway',
      title: 'freeway or expressway',
      cues: ['expressway', 'divided highway|road|multilane|lane|street', 'ramp highway|exit|entrance'],
    },
    {
      id: 'urban-low',
      title: 'urban, low speed',
      cues: ['urban|street low+speed', 'residential'],
      within: { cues: inTown, of: postedSpeed, max: { number: 30, unit: 'mph' } },
    },
    {
      id: 'urban-high',
      title: 'urban, high speed',
      cues: ['urban|street high+speed'],
      within: { cues: inTown, of: postedSpeed, min: { number: 40, unit: 'mph' } },
    },
    {
      id: 'rural',
      title: 'rural',
      cues: [
        'rural',
        'two-lane -urban -street',
        'county+road|highway -urban -street',
        'county sign|taper|flagger|cone -urban -street',
        'flagger -urban -street -expressway -multilane -parkway -boulevard -avenue',
      ],
    },
  ],
  question: { text: 'What kind of road is it?', ease: 1 },
});
