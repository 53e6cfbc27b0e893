import { constant } from '../../calc/expression.ts';
import tackGrade from '../choices/tack-grade.ts';
import sprayTemperatureMost from '../quantities/spray-temperature-most.ts';
import { relation } from '../shapes.ts';
import { ufcFlexible } from '../sources-craft.ts';

export default relation({
  id: 'spray-temperature-most-ms',
  title: 'hottest MS-1, HFMS-1 are sprayed',
  finds: sprayTemperatureMost,
  by: constant(160, 'degF'),
  when: [{ choice: tackGrade, is: ['ms'] }],
  because: 'Thin enough for the nozzles, and no hotter than it may be.',
  sources: [ufcFlexible('table 3-2: MS-1, HFMS-1')],
  examples: [{ given: { 'tack-grade': 'ms' }, finds: [160, 'degF'], source: 'UFC 3-250-03, table 3-2' }],
});
