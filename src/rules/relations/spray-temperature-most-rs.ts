import { constant } from '../../calc/expression.ts';
import tackGrade from '../choices/tack-grade.ts';
import sprayTemperatureMost from '../quantities/spray-temperature-most.ts';
import { relation } from '../shapes.ts';
import { ufcFlexible } from '../sources-craft.ts';

export default relation({
  id: 'spray-temperature-most-rs',
  title: 'hottest RS-1 is sprayed',
  finds: sprayTemperatureMost,
  by: constant(140, 'degF'),
  when: [{ choice: tackGrade, is: ['rs-1'] }],
  because: 'Thin enough for the nozzles, and no hotter than it may be.',
  sources: [ufcFlexible('table 3-2: RS-1')],
  examples: [{ given: { 'tack-grade': 'rs-1' }, finds: [140, 'degF'], source: 'UFC 3-250-03, table 3-2' }],
});
