import { manual2003 } from '../manual.ts';
import postedSpeed from '../quantities/posted-speed.ts';
import { choice } from '../shapes.ts';

export default choice({
  id: 'speed-unit',
  title: 'unit of the speed',
  because:
    'The formulas and the tables have a form for each unit, with its own steps; a converted speed would fall between two rows.',
  sources: [manual2003('Table 6H-4, p. 6H-5')],
  options: [
    { id: 'us', title: 'miles an hour', cues: [] },
    { id: 'metric', title: 'kilometers an hour', cues: [] },
  ],
  default: 'us',
  settledByUnitOf: postedSpeed,
});
