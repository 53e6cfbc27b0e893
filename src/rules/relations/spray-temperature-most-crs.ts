import { constant } from '../../calc/expression.ts';
import tackGrade from '../choices/tack-grade.ts';
import sprayTemperatureMost from '../quantities/spray-temperature-most.ts';
import { relation } from '../shapes.ts';
import { ufcFlexible } from '../sources-craft.ts';

export default relation({
  id: 'spray-temperature-most-crs',
  title: 'hottest CRS-1 is sprayed',
  finds: sprayTemperatureMost,
  by: constant(185, 'degF'),
  when: [{ choice: tackGrade, is: ['crs'] }],
  because: 'Thin enough for the nozzles, and no hotter than it may be.',
  sources: [ufcFlexible('table 3-2: CRS-1; CRS-2 from memory')],
  examples: [{ given: { 'tack-grade': 'crs' }, finds: [185, 'degF'], source: 'UFC 3-250-03, table 3-2' }],
});
